import { Document, Page, Text, View } from '@react-pdf/renderer';
import type { ReactNode } from 'react';
import { look } from './look.ts';
import type { Paper } from './paper-size.ts';
import { QrCode } from './qr-code.tsx';

export interface PaperSheetProps {
  readonly paper: Paper;
  readonly language: string;
  readonly title: string;
  /** Programme, place, day: on every page, so that a page that got loose is still known. */
  readonly more: string;
  /** At the foot of every page: as of when, and by whose books. */
  readonly foot: string;
  /** In words, such as "page 2 of 5". */
  readonly pageOf: (page: number, pages: number) => string;
  /** Address of the screen where this sheet is typed back. */
  readonly qrTo?: string;
  readonly children: ReactNode;
}

/** A document of our own look: its head and foot stand on each page. */
export function PaperSheet({ paper, language, title, more, foot, pageOf, qrTo, children }: PaperSheetProps) {
  return (
    <Document title={title} language={language} creator="Sprigline" producer="Sprigline">
      {/* The library’s other way of cutting pages lays out what is left anew for each of them: minutes for a long list. */}
      <Page experimentalPagination size={paper} style={look.page}>
        <View fixed style={look.head}>
          <View>
            <Text style={look.headTitle}>{title}</Text>
            <Text style={look.headMore}>{more}</Text>
          </View>
          {qrTo !== undefined && <QrCode says={qrTo} size={52} />}
        </View>
        <Text fixed style={look.foot}>{foot}</Text>
        <Text fixed style={look.pageNumber} render={({ pageNumber, totalPages }) => pageOf(pageNumber, totalPages)} />
        <View style={look.body}>{children}</View>
      </Page>
    </Document>
  );
}
