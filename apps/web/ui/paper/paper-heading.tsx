import { Text } from '@react-pdf/renderer';
import { look } from './look.ts';

/** Room that a heading wants below itself on its page, in points: a few lines of what it stands over. */
const AHEAD = 56;

/** A heading that never stands alone at the foot of a page. */
export function PaperHeading({ children }: { children: string }) {
  return <Text style={look.heading} minPresenceAhead={AHEAD}>{children}</Text>;
}
