/** Our sign: a sprig, the line of the ground, and its roots below. */
export function Mark() {
  return (
    <svg viewBox="0 0 32 32" className="size-9 shrink-0" aria-hidden>
      <rect width="32" height="32" rx="7" fill="#1c4a3c" />
      <g fill="none" strokeWidth="2.2" strokeLinecap="round">
        <path stroke="#f7f6ea" d="M16 21V6M16 13 9.500 9.500M16 17.500 8 13.500M16 13l6.500-3.500M16 17.500l8-4" />
        <path stroke="#a9bd97" d="M6 21h20M16 21v5M16 23l-4 3.500M16 23l4 3.500" />
      </g>
    </svg>
  );
}
