import { peopleCsv } from '@/lib/domain/people/people-csv';
import { translatorFor } from '@/lib/messages/translator';
import { makerFromHeaders } from '@/lib/server/auth/maker';
import { contentDisposition } from '@/lib/server/edge/content-disposition';
import { loadPeople } from '@/lib/server/people/load-people';
import { requireShop } from '@/lib/server/shop/read-shop';

type Context = { params: Promise<{ jobId: string }> };

/** GET /api/people/JOB/list.csv: the list as a spreadsheet opens it, and as it can be loaded again. For makers only. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  const headers = { 'Cache-Control': 'no-store' };
  const maker = await makerFromHeaders(request.headers);
  if (!maker) return new Response(null, { status: 401, headers });
  const [shop, view] = await Promise.all([requireShop(), loadPeople(maker, (await params).jobId)]);
  if (!view) return new Response(null, { status: 404, headers });
  const t = translatorFor(shop.locale, 'people');
  const { garments, list } = view;
  const heading = ({ name }: { name: string }) =>
    garments.length === 1 ? t('table.size') : t('table.sizeOf', { garment: name });
  return new Response(peopleCsv(list, garments, heading), {
    headers: {
      ...headers,
      'Content-Type': 'text/csv; charset=utf-8',
      'Content-Disposition': contentDisposition('attachment', `${t('title', { title: view.title })}.csv`),
    },
  });
}
