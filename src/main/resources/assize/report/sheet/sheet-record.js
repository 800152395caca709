
/* A record as the sheet sees it: what it says of each item, and how answers go into its text. */
const recordOf = (base, page) => {
  const kinds = kindsOf(page).item;
  const itemPlaces = new Map(page.order.map((id, i) => [id, i]));
  const known = (place, otherwise) => place === undefined || place < 0 ? otherwise : place;
  const rank = (path, key) => {
    if (path.length === 1 && path[0] === 'observations') {
      return known(itemPlaces.get(key), Infinity);
    }
    const names = path.reduce((group, name) => ownOf(group, name) ?? ownOf(group, '*') ?? {}, page.names);
    return known(Object.keys(names).indexOf(key), path.length === 0 ? -1 : 0);
  };
  const part = (group, key) => group?.group?.find((one) => one.key === key)?.node;
  const text = (node) => node?.text === undefined ? '' : node.text.trim();
  const odd = (node) => node !== undefined && node.text === undefined && !node.nothing;
  const {root} = base;
  const observations = part(root, 'observations');
  const isEven = !odd(observations) || observations.group !== undefined;
  const evidence = part(root, 'evidence');
  const names = new Set(evidence?.group?.map((one) => one.key) ?? []);

  const colorOf = (node) => {
    if (!node?.group) {
      return {chip: text(node), l: '', a: '', b: '', u: ''};
    }
    const lab = (part(node, 'lab')?.list ?? []).map(text);
    return {
      chip: text(part(node, 'chip')), l: lab[0] ?? '', a: lab[1] ?? '', b: lab[2] ?? '', u: text(part(node, 'uncertainty')),
    };
  };
  const yesNo = (words) => ({true: 'yes', false: 'no'})[words.toLowerCase()] ?? words;

  /* What the record says of one thing; odd where it is written in a way that a sheet has no field for. */
  const says = (item, field) => {
    const node = part(part(observations, item), field);
    switch (kinds.get(field)) {
      case 'COLOR': return {value: colorOf(node), odd: node?.list !== undefined};
      case 'YES_NO': return {value: yesNo(text(node)), odd: odd(node)};
      case 'DEPARTURE': return {
        value: {reason: text(part(node, 'reason')), explanation: text(part(node, 'explanation'))}, odd: odd(node) && !node.group,
      };
      default: return {value: text(node), odd: odd(node)};
    }
  };

  /* Texts of what an item already cites. */
  const cites = (item) => {
    const node = part(part(observations, item), 'evidence');
    const cited = node?.list ? node.list.map(text) : text(node) === '' ? [] : [text(node)];
    return cited.map((name) => {
      const piece = part(evidence, name);
      const what = text(part(piece, 'photo')) || text(part(piece, 'document')) || text(part(piece, 'measurement'));
      return {name, what, caption: text(part(piece, 'caption'))};
    });
  };

  const orGone = (words, of = (it) => it) => words === '' ? null : of(words);
  const number = (words) => /^-?\d+(?:\.\d+)?$/.test(words) ? asIs(words) : words;
  const day = (words) => /^\d{4}(?:-\d\d(?:-\d\d)?)?$/.test(words) ? asIs(words) : words;

  const color = (item, field, {chip, l, a, b, u}) => {
    const before = part(part(observations, item), field);
    const read = l + a + b !== '';
    if (!read && chip === '') {
      return null;
    }
    return !read && u === '' && !before?.group
      ? chip
      : inBraces(new Map([
        ['chip', orGone(chip)], ['lab', read ? [l, a, b].map(number) : null], ['uncertainty', read ? orGone(u, number) : null],
      ]));
  };

  const departure = ({reason, explanation}) =>
    reason + explanation === '' ? null : new Map([['reason', reason || 'not given'], ['explanation', orGone(explanation)]]);

  const written = (item, field, value) => {
    switch (kinds.get(field)) {
      case 'COLOR': return color(item, field, value);
      case 'DEPARTURE': return departure(value);
      case 'YES_NO': return orGone(value, (it) => it === 'yes' || it === 'no' ? asIs(it) : it);
      case 'PIECES': return orGone(value, (it) => /^\d+$/.test(it) ? asIs(it) : it);
      case 'GLOSS': return orGone(value, number);
      default: return orGone(value);
    }
  };

  /* Gives each photo that is noted a name, or finds the one that it has. */
  const namesOf = (photos, fresh) =>
    photos.map(({file, caption}) => {
      const had = evidence?.group?.find((one) => text(part(one.node, 'photo')) === file)?.key;
      const made = [...fresh].find(([, map]) => map.get('photo') === file)?.[0];
      if (had !== undefined || made !== undefined) {
        return had ?? made;
      }
      let i = 1;
      while (names.has(`photo-${i}`) || fresh.has(`photo-${i}`)) {
        i++;
      }
      fresh.set(`photo-${i}`, new Map([['photo', file], ['caption', orGone(caption)]]));
      return `photo-${i}`;
    });

  /* Returns the text with answers in it: {sheet: {by, on}, items: {id: {field: value}}}. */
  const write = (answers) => {
    const fresh = new Map();
    const items = new Map();
    page.order.concat(Object.keys(answers.items).filter((id) => !itemPlaces.has(id))).forEach((id) => {
      const fields = answers.items[id];
      if (fields) {
        const map = new Map();
        const place = ([field]) => rank(['observations', id], field === 'photos' ? 'evidence' : field);
        Object.entries(fields).sort((a, b) => place(a) - place(b)).forEach(([field, value]) => {
          if (field === 'photos') {
            const cited = new Set(cites(id).map(({name}) => name));
            const more = [...new Set(namesOf(value.filter(({file}) => file !== ''), fresh))].filter((name) => !cited.has(name));
            if (more.length > 0) {
              map.set('evidence', adding(more));
            }
          } else {
            map.set(field, written(id, field, value));
          }
        });
        items.set(id, map);
      }
    });
    const wanted = new Map();
    const {by, on} = answers.sheet;
    const inspected = new Map();
    if (by !== undefined) {
      inspected.set('by', orGone(by));
    }
    if (on !== undefined) {
      inspected.set('on', orGone(on, day));
    }
    if (inspected.size > 0) {
      wanted.set('inspected', part(root, 'inspected')?.group ? inspected : inBraces(inspected));
    }
    if (fresh.size > 0) {
      wanted.set('evidence', fresh);
    }
    if (items.size > 0) {
      wanted.set('observations', items);
    }
    return writeYaml(base.text, root, wanted, rank);
  };

  return {
    says,
    cites,
    write,
    isEven,
    id: text(part(root, 'record')),
    rules: text(part(root, 'rules')),
    by: text(part(part(root, 'inspected'), 'by')),
    on: text(part(part(root, 'inspected'), 'on')),
    items: (observations?.group ?? []).map((one) => one.key),
  };
};

/* Turns the short form in which a page has the places of its record into what readYaml gives. */
const unpack = (node, text) => {
  if (Array.isArray(node)) {
    const [start, end, value] = node;
    return {text: value ?? text.slice(start, end), start, end};
  }
  if (node.n !== undefined) {
    return {nothing: true, end: node.n};
  }
  const [start, end] = node.at;
  return node.g
    ? {
      group: node.g.map(([key, at, colon, one]) => ({key, at, colon, node: unpack(one, text)})), start, end,
      flow: text[start] === '{',
    }
    : {list: node.l.map((one) => unpack(one, text)), start, end, flow: text[start] === '['};
};
