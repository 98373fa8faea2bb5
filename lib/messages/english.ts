import art from './en/art.json';
import artFindings from './en/art-findings.json';
import artPage from './en/art-page.json';
import bench from './en/bench.json';
import blanks from './en/blanks.json';
import broken from './en/broken.json';
import customerArt from './en/customer-art.json';
import fonts from './en/fonts.json';
import form from './en/form.json';
import garmentWords from './en/garment-words.json';
import garments from './en/garments.json';
import jobs from './en/jobs.json';
import lettering from './en/lettering.json';
import mail from './en/mail.json';
import people from './en/people.json';
import phone from './en/phone.json';
import photographs from './en/photographs.json';
import picture from './en/picture.json';
import proof from './en/proof.json';
import readings from './en/readings.json';
import revision from './en/revision.json';
import send from './en/send.json';
import setUp from './en/set-up.json';
import site from './en/site.json';
import specification from './en/specification.json';
import statement from './en/statement.json';
import table from './en/table.json';

/** English, one file a subject. A new subject is one import and one line here. */
export const english = {
  art,
  'art-findings': artFindings,
  'art-page': artPage,
  bench,
  blanks,
  broken,
  'customer-art': customerArt,
  fonts,
  form,
  'garment-words': garmentWords,
  garments,
  jobs,
  lettering,
  mail,
  people,
  phone,
  photographs,
  picture,
  proof,
  readings,
  revision,
  send,
  'set-up': setUp,
  site,
  specification,
  statement,
  table,
};
