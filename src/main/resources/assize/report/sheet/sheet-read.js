'use strict';

/*
 * Reads the YAML of a record, as people write it by hand, into a tree that knows where each thing
 * stands. What it does not know it refuses, with the place: it never guesses.
 *
 * A node is a text {text, start, end}, nothing {nothing, end}, a group {group: [{key, at, colon,
 * node}], start, end, flow} or a list {list: [node], start, end, flow}; offsets are in UTF-16 units.
 */
class Refused extends Error {
  constructor(words, at) {
    super(words);
    this.at = at;
  }
}

const readYaml = (text) => {
  const deepest = 64;
  let at = 0;
  let depth = 0;

  const refuse = (words, where = at) => {
    throw new Refused(words, where);
  };
  /* Returns a text that the program takes too. */
  const taken = (node) => {
    if (node.text.length > limits.text) {
      refuse(`a text may have at most ${limits.text} characters; this one has ${node.text.length}`, node.start);
    }
    if (yamlText.unseenIn(node.text) >= 0) {
      refuse('this text has an escape for a character that can’t be seen', node.start);
    }
    return node;
  };
  const isBlank = (c) => c === undefined || c === ' ' || c === '\t' || c === '\n' || c === '\r';
  const isEnd = (c) => c === undefined || c === '\n' || c === '\r';
  const lineStart = (where) => {
    let start = where;
    while (start > 0 && !isEnd(text[start - 1])) {
      start--;
    }
    return start;
  };
  const column = (where = at) => where - lineStart(where);
  const spaces = () => {
    while (text[at] === ' ' || text[at] === '\t') {
      at++;
    }
  };
  const lineEnd = () => {
    while (!isEnd(text[at])) {
      at++;
    }
  };
  const nextLine = () => {
    if (text[at] === '\r' && text[at + 1] === '\n') {
      at++;
    }
    at++;
  };

  /* Moves to the next thing that is neither blank nor a remark; tabs do not indent. */
  const skip = () => {
    for (;;) {
      const from = at;
      spaces();
      if (text[at] === '#' && (at === 0 || isBlank(text[at - 1]))) {
        lineEnd();
      } else if (!isEnd(text[at])) {
        if (text.slice(from, at).includes('\t')) {
          refuse('a tab stands before this');
        }
        return;
      }
      if (text[at] === undefined) {
        return;
      }
      nextLine();
    }
  };

  const noProperty = () => {
    const names = {'&': 'an anchor', '*': 'an alias', '!': 'a tag', '%': 'a "%"', '@': 'an "@"', '`': 'a "`"'};
    if (names[text[at]]) {
      refuse(`${names[text[at]]} stands here`);
    }
    if (isBlank(text[at + 1]) && '?-:'.includes(text[at]) || ',]}'.includes(text[at])) {
      refuse(`a "${text[at]}" stands here`);
    }
  };

  /* Joins the lines of a text that is not a block as YAML does: one end of line is a space. */
  const fold = (lines) => {
    let whole = lines[0];
    let ends = 0;
    lines.slice(1).forEach((line) => {
      ends++;
      if (line !== '') {
        whole += ends === 1 ? ' ' + line : '\n'.repeat(ends - 1) + line;
        ends = 0;
      }
    });
    return whole + '\n'.repeat(ends);
  };

  const escapes = {0: '\0', a: '\x07', b: '\b', t: '\t', '\t': '\t', n: '\n', v: '\v', f: '\f', r: '\r', e: '\x1b',
    ' ': ' ', '"': '"', '/': '/', '\\': '\\', N: '\x85', _: '\xa0', L: '\u2028', P: '\u2029'};

  const escaped = () => {
    const long = {x: 2, u: 4, U: 8}[text[at]];
    if (long) {
      const digits = text.slice(at + 1, at + 1 + long);
      const point = parseInt(digits, 16);
      if (!new RegExp(`^[0-9a-fA-F]{${long}}$`).test(digits) || point > 0x10ffff) {
        refuse('this escape is not finished');
      }
      at += 1 + long;
      return String.fromCodePoint(point);
    }
    const plain = escapes[text[at]];
    if (plain === undefined) {
      refuse('this is no escape', at - 1);
    }
    at++;
    return plain;
  };

  const quoted = (parent) => {
    const start = at;
    const mark = text[at];
    const lines = [''];
    const add = (letters) => {
      lines[lines.length - 1] += letters;
    };
    let kept = 0;
    at++;
    for (;;) {
      const c = text[at];
      if (c === undefined) {
        refuse('these quotes are never closed', start);
      } else if (c === mark && mark === "'" && text[at + 1] === "'") {
        add("'");
        at += 2;
      } else if (c === mark) {
        at++;
        break;
      } else if (c === '\\' && mark === '"' && !isEnd(text[at + 1])) {
        at++;
        add(escaped());
        kept = lines[lines.length - 1].length;
      } else if (isEnd(c) || c === '\\' && mark === '"') {
        const joined = c === '\\';
        at += joined ? 1 : 0;
        if (!joined) {
          const last = lines.pop();
          lines.push(last.slice(0, kept) + last.slice(kept).replace(/[ \t]+$/, ''));
        }
        nextLine();
        spaces();
        if (!isEnd(text[at]) && column() <= parent) {
          refuse('this line belongs to quotes that begin above and is not indented', at);
        }
        if (joined) {
          while (isEnd(text[at]) && text[at] !== undefined) {
            add('\n');
            nextLine();
            spaces();
          }
          kept = lines[lines.length - 1].length;
        } else {
          lines.push('');
          kept = 0;
        }
      } else {
        add(c);
        at++;
      }
    }
    return taken({text: fold(lines), start, end: at, quoted: true});
  };

  /* Reads a text without quotes up to the end of its line, or to what ends it within brackets. */
  const plainLine = (flow) => {
    const start = at;
    let end = at;
    for (; !isEnd(text[at]); at++) {
      const c = text[at];
      if (c === '#' && isBlank(text[at - 1]) || flow && ',[]{}'.includes(c)) {
        break;
      }
      if (c === ':' && (isBlank(text[at + 1]) || flow && ',[]{}'.includes(text[at + 1]))) {
        break;
      }
      end = c === ' ' || c === '\t' ? end : at + 1;
    }
    at = end;
    return text.slice(start, end);
  };

  const plain = (parent, flow) => {
    const start = at;
    const lines = [plainLine(flow)];
    let end = at;
    for (;;) {
      spaces();
      if (!flow && text[at] === ':' && isBlank(text[at + 1])) {
        refuse('a second colon stands in this line; put the text in quotes');
      }
      if (!isEnd(text[at]) || text[at] === undefined) {
        break;
      }
      let empty = 0;
      nextLine();
      for (spaces(); isEnd(text[at]) && text[at] !== undefined; spaces()) {
        empty++;
        nextLine();
      }
      const ends = text[at] === undefined || text[at] === '#' || !flow && column() <= parent;
      if (ends || flow && ',[]{}:'.includes(text[at])) {
        break;
      }
      if (text.slice(lineStart(at), at).includes('\t')) {
        refuse('this line is indented by a tab');
      }
      lines.push(...Array(empty).fill(''), plainLine(flow));
      end = at;
    }
    at = end;
    return taken({text: fold(lines), start, end});
  };

  const block = (parent) => {
    const start = at;
    const folded = text[at] === '>';
    const head = /^[|>](?:([1-9])([+-]?)|([+-])([1-9]?))?[ \t]*(?:[ \t]#[^\r\n]*)?$/.exec(
      text.slice(at, (lineEnd(), at)));
    if (!head) {
      refuse('this kind of block is not known here', start);
    }
    const asked = Number(head[1] || head[4] || 0);
    const chomp = head[2] || head[3] || '';
    let indent = asked ? Math.max(parent, 0) + asked : 0;
    const lines = [];
    let end = at;
    while (text[at] !== undefined) {
      const line = at;
      nextLine();
      if (text[at] === undefined) {
        break;
      }
      const from = at;
      while (text[at] === ' ' && (indent === 0 || at - from < indent)) {
        at++;
      }
      if (isEnd(text[at])) {
        lines.push('');
        continue;
      }
      if (at - from <= parent || at - from < indent) {
        at = line;
        break;
      }
      if (indent === 0) {
        indent = at - from;
      }
      if (text[at] === '\t') {
        refuse('a tab stands at the beginning of this line');
      }
      const content = at;
      lineEnd();
      lines.push(text.slice(content, at));
      end = at;
    }
    at = end;
    let empty = 0;
    while (lines.length > 0 && lines[lines.length - 1] === '') {
      lines.pop();
      empty++;
    }
    let whole = '';
    if (folded) {
      let ends = 0;
      let before = true;
      lines.forEach((line) => {
        const own = line === '' || line[0] === ' ' || line[0] === '\t';
        if (line === '') {
          ends++;
        } else {
          const gap = ends > 0 ? '\n'.repeat(ends + (own || before ? 1 : 0)) : own || before ? '\n' : ' ';
          whole += whole === '' && ends === 0 ? line : (whole === '' ? '\n'.repeat(ends) : gap) + line;
          before = own;
          ends = 0;
        }
      });
    } else {
      whole = lines.join('\n');
    }
    let stop = end;
    while (stop > start && isBlank(text[stop - 1])) {
      stop--;
    }
    const last = chomp === '+' ? '\n'.repeat(empty + (whole === '' ? 0 : 1)) : chomp === '-' || whole === '' ? '' : '\n';
    return taken({text: whole + last, start, end: stop, block: true});
  };

  const deeper = (read) => {
    if (++depth > deepest) {
      refuse('names are nested too deep here');
    }
    const node = read();
    depth--;
    return node;
  };

  const nothing = (end) => ({nothing: true, end});

  const addTo = (group, part, seen) => {
    if (seen.has(part.key)) {
      refuse(`"${part.key}" is written twice`, part.at);
    }
    if (part.key === '<<') {
      refuse('"<<" copies other entries', part.at);
    }
    seen.add(part.key);
    group.push(part);
  };

  const flow = () => deeper(() => {
    const start = at;
    const isGroup = text[at] === '{';
    const close = isGroup ? '}' : ']';
    const parts = [];
    const seen = new Set();
    at++;
    for (skip(); text[at] !== close; skip()) {
      if (text[at] === undefined) {
        refuse(`this "${text[start]}" is never closed`, start);
      }
      const from = at;
      const node = flowNode();
      skip();
      if (isGroup) {
        if (node.text === undefined || text.slice(from, node.end).includes('\n')) {
          refuse('a name should stand here', from);
        }
        const part = {key: node.text, at: from, colon: -1, node: nothing(node.end)};
        if (text[at] === ':') {
          if (/[\r\n]/.test(text.slice(node.end, at))) {
            refuse('this colon stands in another line than its name');
          }
          if (at - from > limits.name) {
            refuse('this is too long for a name', from);
          }
          part.colon = at++;
          part.node = nothing(at);
          skip();
          if (text[at] !== ',' && text[at] !== close) {
            part.node = flowNode();
            skip();
          }
        }
        addTo(parts, part, seen);
      } else {
        parts.push(node);
      }
      if (text[at] === ',') {
        at++;
      } else if (text[at] !== close) {
        refuse(`a comma or "${close}" should stand here`);
      }
    }
    at++;
    return {[isGroup ? 'group' : 'list']: parts, start, end: at, flow: true};
  });

  const flowNode = () => {
    if (text[at] === undefined || ',:|>'.includes(text[at])) {
      refuse('something is missing here');
    }
    if ('{['.includes(text[at])) {
      return flow();
    }
    noProperty();
    return '"\''.includes(text[at]) ? quoted(-1) : plain(-1, true);
  };

  const restOfLine = () => {
    const from = at;
    spaces();
    if (text[at] === '#' && from !== at) {
      lineEnd();
    }
    if (!isEnd(text[at])) {
      refuse('this does not belong to what stands before it');
    }
  };

  const inline = (parent) => {
    let node;
    if ('{['.includes(text[at])) {
      node = flow();
    } else if ('|>'.includes(text[at])) {
      return block(parent);
    } else {
      noProperty();
      node = '"\''.includes(text[at]) ? quoted(parent) : plain(parent, false);
    }
    restOfLine();
    return node;
  };

  /* Reads a name and the colon behind it, if the line begins with one. */
  const name = () => {
    const start = at;
    if (isEnd(text[at]) || '{[|>#'.includes(text[at])) {
      return null;
    }
    let key;
    if ('"\''.includes(text[at])) {
      const node = quoted(-1);
      key = node.text;
      if (text.slice(start, at).includes('\n')) {
        at = start;
        return null;
      }
    } else {
      key = plainLine(false);
    }
    spaces();
    if (text[at] === ':' && isBlank(text[at + 1])) {
      const colon = at;
      if (colon - start > limits.name) {
        refuse('this is too long for a name', start);
      }
      at++;
      return {key, at: start, colon};
    }
    at = start;
    return null;
  };

  const group = (indent) => deeper(() => {
    const parts = [];
    const seen = new Set();
    const start = at;
    for (;;) {
      noProperty();
      const part = name();
      if (!part) {
        refuse('a name with a colon should stand here');
      }
      part.node = after(indent);
      addTo(parts, part, seen);
      skip();
      if (text[at] === undefined || column() < indent) {
        return {group: parts, start, end: at, flow: false};
      }
      if (column() > indent) {
        refuse('this line is indented further than its neighbors');
      }
    }
  });

  /* Reads what belongs to a name: on its line, or indented below it. */
  const after = (indent) => {
    const from = at;
    spaces();
    if (text.slice(from, at).includes('\t')) {
      refuse('a tab stands before this');
    }
    if (!isEnd(text[at]) && !(text[at] === '#' && at > from)) {
      return inline(indent);
    }
    at = from;
    skip();
    const isDash = text[at] === '-' && isBlank(text[at + 1]);
    if (text[at] !== undefined && (column() > indent || isDash && column() === indent)) {
      return any(indent);
    }
    at = from;
    restOfLine();
    return nothing(from);
  };

  const list = (indent) => deeper(() => {
    const parts = [];
    const start = at;
    for (;;) {
      at++;
      const from = at;
      spaces();
      if (text.slice(from, at).includes('\t')) {
        refuse('a tab stands here');
      }
      if (isEnd(text[at]) || text[at] === '#') {
        at = from;
        skip();
        const below = text[at] !== undefined && column() > indent;
        if (below) {
          parts.push(any(indent));
        } else {
          at = from;
          parts.push(nothing(from));
          restOfLine();
        }
      } else {
        parts.push(any(indent));
      }
      skip();
      if (text[at] === undefined || column() < indent || text[at] !== '-' || !isBlank(text[at + 1])) {
        if (text[at] !== undefined && column() > indent) {
          refuse('this line is indented further than its neighbors');
        }
        return {list: parts, start, end: at, flow: false};
      }
      if (column() > indent) {
        refuse('this line is indented further than its neighbors');
      }
    }
  });

  const any = (parent) => {
    const start = at;
    const indent = column();
    if (text[at] === '-' && isBlank(text[at + 1])) {
      return list(indent);
    }
    if (!'{[|>'.includes(text[at])) {
      noProperty();
      const isName = name() !== null;
      at = start;
      if (isName) {
        return group(indent);
      }
    }
    return inline(parent);
  };

  const unseen = yamlText.unseenIn(text);
  if (unseen >= 0) {
    refuse('a character that can’t be seen stands here', unseen);
  }
  if (/^---[ \t]*(?:#[^\r\n]*)?(?=\r|\n)/.test(text)) {
    lineEnd();
  }
  skip();
  if (text[at] === undefined) {
    refuse('there is nothing in this file', 0);
  }
  if (column() !== 0) {
    refuse('the first line is indented');
  }
  const root = any(-1);
  skip();
  if (text[at] !== undefined) {
    refuse('this does not belong to what stands before it');
  }
  if (!root.group) {
    refuse('this is no record', 0);
  }
  return root;
};
