import { redirect } from 'next/navigation';
import { requireMaker } from './maker';

/** The shop's address leads to the bench; those who are not signed in are led on from there. */
export default async function FirstPage() {
  await requireMaker();
  redirect('/jobs');
}
