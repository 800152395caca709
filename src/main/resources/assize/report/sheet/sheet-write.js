
/* Writes texts as YAML that every reader of it takes for the same text. */
const yamlText = (() => {
  const unseen = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u0084\u0086-\u009f\u202a-\u202e\u2066-\u2069\ufeff\ufffe\uffff]/gu;
  const halves = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;
  const never = new RegExp(`${halves.source}|${unseen.source}`);
  const plain = /^[A-Za-z\u00c0-\u024f](?:[A-Za-z0-9\u00c0-\u024f .()/+*±°'"_–-]*[A-Za-z0-9\u00c0-\u024f.)"'°])?$/;
  const words = /^(?:y|n|yes|no|on|off|true|false|null|nan|inf|none)$/i;
  const measured = /^[0-9][0-9./]*(?:°|["']| [0-9./]*[A-Za-zµ°±"'][A-Za-z0-9µ°±"' ./-]*)$/;
  const escapes = {'"': '\\"', '\\': '\\\\', '\n': '\\n', '\t': '\\t', '\r': '\\r'};
  const quoted = (text) =>
    '"' + text.replace(/["\\\n\t\r\u0085\u00a0\u00ad\u200b-\u200f\u2028\u2029\u2060]/g, (c) =>
      escapes[c] ?? '\\u' + c.charCodeAt(0).toString(16).padStart(4, '0')) + '"';
  return {
    /* Returns a text without what no record may hold: what can't be seen, and halves of characters. */
    clean: (text) => text.replace(/\r\n?/g, '\n').replace(halves, '').replace(unseen, ''),
    /* Returns the place of the first such character, or -1. */
    unseenIn: (text) => text.search(never),
    of: (text) =>
      (plain.test(text) || measured.test(text)) && !words.test(text)
        ? text
        : quoted(text),
  };
})();

/* A value that is written as it is: a number, yes or no. */
const asIs = (words) => ({asIs: words});
/* A group that is written within braces. */
const inBraces = (group) => ({inBraces: group});
/* What a list gets beside what is in it. */
const adding = (list) => ({adding: list});

/*
 * Puts answers into the text of a record and keeps every other character. What is wanted is a map of
 * names to values: a text, null to take away, a list of texts, what asIs, inBraces and adding give, or
 * a map of the same kind. Rank says in which order names stand: rank(path, key).
 */
const writeYaml = (text, root, wanted, rank) => {
  const edits = [];
  const end = text.includes('\r\n') ? '\r\n' : '\n';
  const edit = (from, to, words) => edits.push({from, to, words, order: edits.length});
  const lineStart = (where) => {
    let start = where;
    while (start > 0 && text[start - 1] !== '\n' && text[start - 1] !== '\r') {
      start--;
    }
    return start;
  };
  const lineEnd = (where) => {
    let stop = where;
    while (stop < text.length && text[stop] !== '\n' && text[stop] !== '\r') {
      stop++;
    }
    return stop;
  };
  const afterEnd = (where) => where + (text.startsWith('\r\n', where) ? 2 : where < text.length ? 1 : 0);
  const endOf = (node) => {
    const parts = node.flow ? [] : node.group ?? node.list ?? [];
    const last = parts[parts.length - 1];
    return last === undefined ? node.end : endOf(last.node ?? last);
  };
  const isMap = (value) => value instanceof Map;

  const scalar = (value) =>
    Array.isArray(value.adding ?? value)
      ? `[${(value.adding ?? value).map(scalar).join(', ')}]`
      : value.inBraces
        ? `{${[...value.inBraces].map(([key, one]) => `${key}: ${scalar(one)}`).join(', ')}}`
        : isMap(value)
          ? scalar(inBraces(value))
          : value.asIs ?? yamlText.of(value);

  const formatted = (key, value, indent) =>
    isMap(value)
      ? [`${key}:`, ...[...value].flatMap(([name, one]) =>
        formatted(name, one, '').map((line) => '  ' + line))].map((line) => indent + line)
      : [`${indent}${key}: ${scalar(value)}`];

  const without = (value) =>
    isMap(value)
      ? new Map([...value].filter(([, one]) => !isEmpty(one)).map(([key, one]) => [key, without(one)]))
      : value.inBraces
        ? inBraces(without(value.inBraces))
        : value;
  const isEmpty = (value) =>
    value === null || isMap(value.inBraces ?? value) && without(value.inBraces ?? value).size === 0;

  const replace = (part, value) => {
    if (part.node.nothing) {
      const missing = part.colon < 0 ? part.node.end : part.colon + 1;
      edit(missing, missing, `${part.colon < 0 ? ': ' : ' '}${scalar(value)}`);
    } else {
      const lines = !part.node.flow && part.node.text === undefined;
      edit(lines ? part.colon + 1 : part.node.start, endOf(part.node), (lines ? ' ' : '') + scalar(value));
    }
  };

  const addTo = (part, more) => {
    const {node} = part;
    const last = node.list?.[node.list.length - 1];
    const words = more.map(scalar);
    if (!node.list) {
      replace(part, node.text === undefined ? more : [node.text, ...more]);
    } else if (node.flow) {
      const place = last ? endOf(last) : node.start + 1;
      edit(place, place, (last ? ', ' : '') + words.join(', '));
    } else {
      const indent = ' '.repeat(node.start - lineStart(node.start));
      const stop = lineEnd(endOf(last));
      edit(stop, stop, words.map((word) => `${end}${indent}- ${word}`).join(''));
    }
  };

  /* Says whether everything in a group would be taken away, and nothing comes in. */
  const leavesNothing = (group, value) => {
    const parts = new Map(group.group.map((part) => [part.key, part]));
    for (const [key, one] of value) {
      const part = parts.get(key);
      const deep = part?.node.group && isMap(one);
      if (one !== null && !(deep ? leavesNothing(part.node, one) : isEmpty(one))) {
        return false;
      }
    }
    return group.group.every((part) => {
      const one = value.get(part.key);
      return one === null || isMap(one) && part.node.group !== undefined && leavesNothing(part.node, one);
    });
  };

  const hasRemark = (from, to) => /(?:^|\s)#/.test(text.slice(from, to));

  /* Takes away what stands between two places, and its line where nothing else stands there. */
  const drop = (from, to) => {
    const start = lineStart(from);
    const stop = lineEnd(to);
    if (text.slice(start, from).trim() !== '' || text.slice(to, stop).trim() !== '') {
      edit(from, to, '');
    } else if (stop === text.length && start > 0) {
      edit(text.startsWith('\r\n', start - 2) ? start - 2 : start - 1, stop, '');
    } else {
      edit(start, afterEnd(stop), '');
    }
  };

  /* Takes away what stands in a group of lines; remarks stay. */
  const dropParts = (group) =>
    group.group.forEach((part) => {
      const below = part.node.group && !part.node.flow && hasRemark(part.colon, endOf(part.node));
      if (below) {
        drop(part.at, part.colon + 1);
        dropParts(part.node);
      } else {
        drop(part.at, endOf(part.node));
      }
    });

  const takeAway = (part) => {
    const {node} = part;
    if (!node.group || !hasRemark(part.colon, endOf(node))) {
      drop(part.at, endOf(node));
    } else if (node.flow) {
      edit(node.group[0].at, endOf(node.group[node.group.length - 1].node), '');
    } else {
      edit(part.colon + 1, part.colon + 1, ' {}');
      dropParts(node);
    }
  };

  const changeFlow = (group, added, gone) => {
    const kept = group.group.filter((part) => !gone.has(part.key));
    const words = added.map(([key, value]) => [key, `${key}: ${scalar(without(value))}`]);
    if (kept.length === 0) {
      const parts = group.group;
      const from = parts.length === 0 ? group.start + 1 : parts[0].at;
      const to = parts.length === 0 ? from : endOf(parts[parts.length - 1].node);
      edit(from, to, words.map(([, one]) => one).join(', '));
      return;
    }
    const places = new Map();
    words.forEach(([key, one]) => {
      const before = kept.filter((part) => group.rank(part.key) <= group.rank(key)).pop();
      const place = before ? endOf(before.node) : kept[0].at;
      places.set(place, [...places.get(place) ?? [], before ? `, ${one}` : `${one}, `]);
    });
    places.forEach((several, place) => edit(place, place, several.join('')));
    group.group.forEach((part, i) => {
      if (gone.has(part.key)) {
        const next = group.group[i + 1];
        const laterKept = group.group.slice(i + 1).some((one) => !gone.has(one.key));
        if (laterKept) {
          edit(part.at, next.at, '');
        } else if (!gone.has(group.group[i - 1].key)) {
          edit(endOf(group.group[i - 1].node), endOf(group.group[group.group.length - 1].node), '');
        }
      }
    });
  };

  const changeBlock = (group, added, gone, owner) => {
    const kept = group.group.filter((part) => !gone.has(part.key));
    const first = group.group[0];
    const indent = ' '.repeat(first.at - lineStart(first.at));
    const lines = (some) => some.flatMap(([key, value]) => formatted(key, without(value), indent));
    let left = added;
    group.group.filter((part) => gone.has(part.key)).forEach((part, i) => {
      if (kept.length === 0 && i === 0) {
        const words = lines(left).join(end).slice(indent.length);
        edit(part.at, endOf(part.node), words);
        left = [];
      } else {
        takeAway(part);
      }
    });
    const places = new Map();
    left.forEach((one) => {
      const before = kept.filter((part) => group.rank(part.key) <= group.rank(one[0])).pop();
      const top = owner !== undefined && text.slice(owner.colon + 1, lineEnd(owner.colon)).trim() === ''
        ? owner.colon + 1
        : undefined;
      const place = before ? endOf(before.node) : top ?? -1;
      places.set(place, [...places.get(place) ?? [], one]);
    });
    places.forEach((several, place) => {
      if (place < 0) {
        edit(first.at, first.at, lines(several).join(end).slice(indent.length) + end + indent);
      } else {
        const stop = lineEnd(place);
        edit(stop, stop, end + lines(several).join(end));
      }
    });
  };

  const change = (group, value, path, owner) => {
    const parts = new Map(group.group.map((part) => [part.key, part]));
    const gone = new Set();
    const added = [];
    value.forEach((one, key) => {
      const part = parts.get(key);
      const deep = part?.node.group && isMap(one);
      if (!part) {
        if (!isEmpty(one)) {
          added.push([key, one]);
        }
      } else if (one === null || deep && part.node.group.length > 0 && leavesNothing(part.node, one)) {
        gone.add(key);
      } else if (deep) {
        change(part.node, one, [...path, key], part);
      } else if (isMap(one)) {
        if (!isEmpty(one)) {
          fill(part, one, group);
        }
      } else if (one.adding) {
        addTo(part, one.adding);
      } else if (one.inBraces && part.node.group) {
        change(part.node, one.inBraces, [...path, key], part);
      } else if (!isEmpty(one)) {
        replace(part, without(one));
      }
    });
    const ranked = {...group, rank: (key) => rank(path, key)};
    added.sort((a, b) => ranked.rank(a[0]) - ranked.rank(b[0]));
    if (added.length === 0 && gone.size === 0) {
      return;
    }
    if (group.flow) {
      changeFlow(ranked, added, gone);
    } else {
      changeBlock(ranked, added, gone, owner);
    }
  };

  /* Writes a group of lines below a name that has nothing, or {}, behind it. */
  const fill = (part, value, group) => {
    const bare = without(value);
    if (group.flow || part.node.text !== undefined || part.node.list) {
      replace(part, inBraces(bare));
      return;
    }
    const indent = ' '.repeat(part.at - lineStart(part.at));
    const lines = formatted('', bare, indent).slice(1);
    edit(lineEnd(part.node.end), lineEnd(part.node.end), end + lines.join(end));
  };

  const emptied = (group, value) => {
    group.group.forEach((part) => {
      const one = value.get(part.key);
      const empty = isMap(one) && part.node.group?.length === 0 && part.node.flow && !isEmpty(one);
      if (empty && !group.flow && text.slice(part.node.end, lineEnd(part.node.end)).trim() === '') {
        const indent = ' '.repeat(part.at - lineStart(part.at));
        const lines = formatted('', without(one), indent).slice(1);
        edit(part.colon + 1, part.node.end, end + lines.join(end));
        value.delete(part.key);
      }
    });
  };

  const top = new Map(wanted);
  emptied(root, top);
  change(root, top, [], undefined);
  let written = '';
  let at = 0;
  edits.sort((a, b) => a.from - b.from || a.to - a.from - (b.to - b.from) || a.order - b.order);
  edits.forEach(({from, to, words}) => {
    if (from < at) {
      throw new Error('two changes meet');
    }
    written += text.slice(at, from) + words;
    at = to;
  });
  return written + text.slice(at);
};
