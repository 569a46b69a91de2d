import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { TypeLabel } from '../../features/scan/type-label.tsx';
import { publicAddress } from '../../lib/public-address.ts';
import { titled } from '../../lib/titled.ts';
import { codeSaid } from '../../ui/scanner/code-said.ts';

export const generateMetadata = titled(({ scan }) => scan.door.title);

/** A label typed by hand; its own address takes over. */
export default async function LabelsPage({ searchParams }: { searchParams: Promise<{ code?: string }> }) {
  const { code } = await searchParams;
  if (!code) return <TypeLabel />;
  const said = codeSaid(code, [await publicAddress()]);
  redirect(`/l/${encodeURIComponent(said.is === 'label' ? said.code : code.trim().slice(0, 60))}` as Route);
}
