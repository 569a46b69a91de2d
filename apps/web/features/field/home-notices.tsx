import { DoubtsNotice } from './doubts-notice.tsx';
import { UpdateNotice } from './update-notice.tsx';

/** What there is to say on the screen where nothing is being tapped in. */
export const HomeNotices = () => (
  <>
    <UpdateNotice />
    <DoubtsNotice />
  </>
);
