import { chartCsv } from '@/lib/domain/garment/chart-text/write-chart-csv';
import { hundredthsFromMinor } from '@/lib/domain/money/amount';
import { makerFromHeaders } from '@/lib/server/auth/maker';
import { loadBlank } from '@/lib/server/blanks/load-blank';
import { contentDisposition } from '@/lib/server/edge/content-disposition';
import { requireShop } from '@/lib/server/shop/read-shop';

type Context = { params: Promise<{ blankId: string }> };

/** GET /api/blanks/ID/chart.csv: the size chart as a spreadsheet opens it, and as it can be loaded again. For makers only. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  const headers = { 'Cache-Control': 'no-store' };
  const maker = await makerFromHeaders(request.headers);
  if (!maker) return new Response(null, { status: 401, headers });
  const [shop, blank] = await Promise.all([requireShop(), loadBlank(maker, (await params).blankId)]);
  if (!blank) return new Response(null, { status: 404, headers });
  const { kind, name } = blank.style;
  const sizes = blank.style.sizes.map((size) => ({
    ...size,
    costMinor: size.costMinor === null ? null : hundredthsFromMinor(size.costMinor, shop.currency),
  }));
  return new Response(chartCsv({ kind, sizes }, shop.unit), {
    headers: {
      ...headers,
      'Content-Type': 'text/csv; charset=utf-8',
      'Content-Disposition': contentDisposition('attachment', `${name}.csv`),
    },
  });
}
