import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { fieldAddress } from '../../../../lib/field-address.ts';

/** The way from everything else to what works without a signal. */
export default async function ToFieldPage({ params }: { params: Promise<{ programme: string }> }) {
  redirect(fieldAddress((await params).programme) as Route);
}
