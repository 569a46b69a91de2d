/** A scientific name: Latin, in italics, and not to be translated. */
export function Species({ name }: { name: string }) {
  return (
    <i lang="la" translate="no">
      {name}
    </i>
  );
}
