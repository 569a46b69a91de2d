import { StyleSheet } from '@react-pdf/renderer';
import { FAMILIES } from './fonts.ts';

/** Black on white: any printer does, and a photocopy of it still reads. Points. */
export const look = StyleSheet.create({
  page: { fontFamily: FAMILIES as unknown as string, fontSize: 10, color: '#000', paddingTop: 88, paddingBottom: 48, paddingHorizontal: 40 },
  head: { position: 'absolute', top: 28, left: 40, right: 40, flexDirection: 'row', justifyContent: 'space-between', alignItems: 'flex-end', minHeight: 57, borderBottomWidth: 1, paddingBottom: 4 },
  headTitle: { fontSize: 14, fontWeight: 700, lineHeight: 1.15 },
  headMore: { fontSize: 8.5, marginTop: 2 },
  foot: { position: 'absolute', bottom: 24, left: 40, right: 130, fontSize: 8.5 },
  pageNumber: { position: 'absolute', bottom: 24, right: 40, width: 80, fontSize: 8.5, textAlign: 'right' },
  /**
   * Not on the page itself: there it would swallow the page numbers, whose height is not known beforehand. With its
   * size, since a height is a multiple of the size told beside it, and of 18 where there is none.
   */
  body: { fontSize: 10, lineHeight: 1.3 },
  lead: { marginBottom: 8 },
  heading: { fontSize: 12, fontWeight: 700, marginTop: 12, marginBottom: 4 },
  row: { flexDirection: 'row', borderBottomWidth: 0.5, borderColor: '#777', alignItems: 'center', minHeight: 24 },
  rowHead: { flexDirection: 'row', borderBottomWidth: 1, alignItems: 'flex-end', fontSize: 8.5, fontWeight: 700, lineHeight: 1.15 },
  cell: { paddingHorizontal: 3, paddingVertical: 3 },
  /** Beside a number, which ends where this begins. */
  afterNumber: { paddingLeft: 9 },
  number: { textAlign: 'right' },
  code: { fontWeight: 700, fontSize: 12 },
  box: { width: 34, height: 18, borderWidth: 1 },
  tick: { width: 13, height: 13, borderWidth: 1 },
  caution: { borderWidth: 1, padding: 6, marginTop: 8 },
});
