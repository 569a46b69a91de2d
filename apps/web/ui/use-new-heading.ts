import { type RefObject, useEffect, useRef } from 'react';

/**
 * Leads whoever hears a screen to what is new on it: its heading takes the focus. Only once it was painted, since moving the focus
 * has a slow phone lay out the whole screen on the spot.
 *
 * @param of what the heading tells of; when that changes it is new again
 */
export function useNewHeading(of?: unknown): RefObject<HTMLHeadingElement | null> {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    let painted: ReturnType<typeof setTimeout> | undefined;
    const frame = requestAnimationFrame(() => void (painted = setTimeout(() => heading.current?.focus(), 0)));
    return () => (cancelAnimationFrame(frame), clearTimeout(painted));
  }, [of]);
  return heading;
}
