import broken from './en/broken.json';
import form from './en/form.json';
import readings from './en/readings.json';
import site from './en/site.json';

/** English, one file a subject. A new subject is one import and one line here. */
export const english = { broken, form, readings, site };
