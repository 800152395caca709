
/* Bounds of every file that the program reads, which SheetWritingTest holds to them. */
const limits = {text: 65536, name: 1024, file: 4 * 1024 * 1024, path: 1000, fileName: 255};

const ownOf = (group, name) => Object.hasOwn(group, name) ? group[name] : undefined;

/* What the page says of its record's names: the names and bounds under an aspect or another field of an item. */
const namesUnder = (page, field) => ownOf(page.names.observations['*'], field) ?? {};

/*
 * What kind of answer a field has: of an item, those of which the page knows and two that have fields
 * of their own on the sheet; of the sheet, who looked and when.
 */
const kindsOf = (page) => {
  const item = new Map(Object.entries(page.fields).map(([name, [kind]]) => [name, kind]));
  item.set('departure', 'DEPARTURE').set('photos', 'PHOTOS');
  return {item, sheet: new Map([['by', 'TEXT'], ['on', 'DAY']])};
};

/*
 * Says what is wrong with the answer in a field that the program would refuse; empty where nothing
 * is. An answer with a fault is not saved.
 */
const faultsOf = (page) => {
  const text = (value) =>
    value.length > limits.text
      ? `A text may have at most ${limits.text} characters; this one has ${value.length}. Shorten it.`
      : '';

  /* Characters that show nothing and take no room, and spaces of every kind. */
  const hidden =
    /[\0-\x08\x0e-\x1b\x7f-\x84\x86-\x9f\xad\u034f\u061c\u115f\u1160\u17b4\u17b5\u180b-\u180f\u200b-\u200f\u202a-\u202e\u2060-\u206f\u2800\u3164\ufe00-\ufe0f\ufeff\uffa0\ufff0-\ufffb\u{13430}-\u{1343f}\u{13441}\u{13442}\u{16fe4}\u{1bca0}-\u{1bca3}\u{1d159}\u{1d173}-\u{1d17a}\u{e0000}-\u{e0fff}]/u;
  const space = /[\t-\r\x1c-\x20\x85\xa0\u1680\u2000-\u200a\u2028\u2029\u202f\u205f\u3000]/u;
  const isUnseen = (sign) => hidden.test(sign) || space.test(sign);
  const blank = (value) =>
    value !== '' && [...value].every(isUnseen) ? 'Write something that can be seen.' : '';
  const unseen = (value, isOdd) => {
    const odd = [...value].find(isOdd);
    return odd === undefined
      ? ''
      : `A character here can’t be seen (U+${odd.codePointAt(0).toString(16).toUpperCase().padStart(4, '0')}). Delete it.`;
  };
  const stamp = (value) => text(value) || unseen(value, (sign) => sign > '\x7f' && hidden.test(sign));
  const word = (value) => text(value) || blank(value) || unseen(value, (sign) => sign > '\x7f' && isUnseen(sign));

  const size = (value) => {
    if (/\d{21}/.test(value)) {
      return 'A number has at most 20 digits.';
    }
    if (/\d,\d/.test(value)) {
      return 'Write a point, not a comma, as in 2.4 mm.';
    }
    return value === '' || /[\d½¼¾⅓⅔⅛⅜⅝⅞⅕⅖⅗⅘⅙⅚⅐⅑⅒]/.test(value)
      ? ''
      : 'Write a number and its unit, as in 2.4 mm or 3/32 in.';
  };

  const pieces = (value, [[, most]]) =>
    value === '' || /^\d{1,15}$/.test(value) && Number(value) <= most
      ? ''
      : `Write a whole number, at most ${most}.`;

  const units = '(\\d{1,20}(?:\\.\\d{1,20})?)(?: *(?:GU|units))?';
  const glossUnits = new RegExp(`^${units}(?: *(?:±|\\+/-) *${units})?$`, 'i');
  const gloss = (value) => {
    const band = value.toLowerCase().replace(/-/g, ' ');
    const [, of, by] = glossUnits.exec(value) ?? [];
    const isRead = of !== undefined && [of, by ?? '0'].every((one) => Number(one) <= page.mostGloss);
    return value === '' || isRead || page.bands.some((one) => one.replace(/-/g, ' ') === band)
      ? ''
      : `Write units from 0 to ${page.mostGloss}, as in 41 or 41 ± 3.`;
  };

  const isWithin = (value, least, most) =>
    /^[+-]?\d{1,12}(?:\.\d{1,12})?$/.test(value) && Number(value) >= least && Number(value) <= most;
  const color = (value, {lab: [l, a, b], uncertainty: [u]}) => {
    const readings = [['l', 'L*', l], ['a', 'a*', a], ['b', 'b*', b], ['u', 'The uncertainty', u]];
    const bad = readings.find(([key, , [least, most]]) => value[key] !== '' && !isWithin(value[key], least, most));
    if (bad) {
      const [, name, [least, most]] = bad;
      return `${name} is a number from ${least} to ${most}.`;
    }
    const read = ['l', 'a', 'b'].filter((key) => value[key] !== '').length;
    return read === 3 || read === 0 && value.u === '' ? '' : 'A reading is three numbers: L*, a* and b*.';
  };

  /* Four hundred years bring the same days again. */
  const daysOf = (year, month) => new Date(Date.UTC(2000 + year % 400, month, 0)).getUTCDate();
  const day = (value) => {
    const [, year, month, date] = /^(\d{4})(?:-(\d\d)(?:-(\d\d))?)?[?~%]?$/.exec(value) ?? [];
    const isMonth = month === undefined || month >= 1 && month <= 12;
    const isDay = date === undefined || date >= 1 && isMonth && date <= daysOf(Number(year), Number(month));
    return value === '' || year !== undefined && isMonth && isDay ? '' : 'Write the day as in 2026-10-03.';
  };

  const lookAlike = /[\u2044\u2215\u29f8\uff0f\u29f5\u29f9\ufe68\uff3c\u2024\u2025\u2026\ufe52\uff0e\u2236\ufe55\uff1a]/;
  const withoutWidth =
    /[\u00ad\u034f\u061c\u115f\u1160\u17b4\u17b5\u180e\u200b\u200e\u200f\u2060-\u2064\u3164\uffa0]/;
  const device = /^(?:con|prn|aux|nul|com[0-9]|lpt[0-9])$/i;
  const path = (value) => {
    const names = value.split('/');
    if (value.includes('\\')) {
      return 'Write / between folders, not a backslash.';
    }
    if (/^(?:\/|~|[A-Za-z]:)/.test(value) || names.includes('..')) {
      return 'Name a file in the record’s folder or below it, as in photos/lamp.jpg.';
    }
    if (value.length > limits.path || names.some((name) => name.length > limits.fileName)) {
      return `A file’s name may have at most ${limits.fileName} characters, with its folders ${limits.path}.`;
    }
    if (lookAlike.test(value) || withoutWidth.test(value)) {
      return 'A sign in this name can’t be seen, or looks like another one.';
    }
    return names.some((name) => name.includes(':') || name !== '.' && /[. ]$/.test(name) || device.test(name.split('.')[0].trim()))
      ? 'Some systems can’t have a file of this name. Name it otherwise, as in photos/lamp.jpg.'
      : '';
  };
  const photo = ({file, caption}) =>
    file === '' && caption !== '' ? 'Write the name of the photo’s file.' : path(file) || blank(caption) || text(caption);

  const first = (faults) => faults.find((words) => words !== '') ?? '';

  const kinds = kindsOf(page);
  return (field, value) => {
    switch (kinds.item.get(field) ?? kinds.sheet.get(field)) {
      case 'COLOR': return color(value, namesUnder(page, field));
      case 'SIZE': return size(value) || text(value);
      case 'PIECES': return pieces(value, namesUnder(page, field));
      case 'GLOSS': return gloss(value);
      case 'STAMPED': return stamp(value);
      case 'DEPARTURE': return word(value.reason) || text(value.explanation);
      case 'PHOTOS': return first(value.map(photo));
      case 'DAY': return day(value);
      default: return text(value);
    }
  };
};

/* Says whether a text is longer, in UTF-8, than a file may be. */
const isTooLarge = (text, marked) => new TextEncoder().encode(text).length + (marked ? 3 : 0) > limits.file;

/*
 * Tells one text from another: FNV-1a of 64 bits over its UTF-8. It keeps no secret and needs none
 * of what browsers give only to pages from a server.
 */
const digestOf = (text) => {
  let hash = 0xcbf29ce484222325n;
  new TextEncoder().encode(text).forEach((byte) => {
    hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * 0x100000001b3n);
  });
  return hash.toString(16).padStart(16, '0');
};
