'use strict';
(() => {
  const letters = new Intl.Collator('en', {numeric: true, sensitivity: 'base'});
  const tables = [...document.querySelectorAll('table.vehicles')];
  const rows = tables.flatMap((table) => [...table.tBodies[0].rows]);

  const key = (row, column) => {
    const cell = row.cells[column];
    const by = cell.dataset.by;
    return by === undefined ? cell.textContent : by === '' ? null : Number(by);
  };

  const compare = (a, b, way) => {
    if (a === null || b === null) {
      return (a === null ? 1 : 0) - (b === null ? 1 : 0);
    }
    return way * (typeof a === 'number' ? a - b : letters.compare(a, b));
  };

  const ways = {
    words: ['from A to Z', 'from Z to A'],
    days: ['the earliest first', 'the latest first'],
    number: ['the lowest first', 'the highest first'],
  };

  const sort = (table, heads, column) => {
    const head = heads[column];
    const kind = head.dataset.kind;
    const before = head.getAttribute('aria-sort');
    const up = before ? before === 'descending' : kind !== 'number';
    heads.forEach((one) => one.removeAttribute('aria-sort'));
    head.setAttribute('aria-sort', up ? 'ascending' : 'descending');
    const body = table.tBodies[0];
    const sorted = [...body.rows]
      .map((row) => [key(row, column), row])
      .sort((a, b) => compare(a[0], b[0], up ? 1 : -1));
    const all = document.createDocumentFragment();
    sorted.forEach(([, row]) => all.append(row));
    body.remove();
    body.append(all);
    table.append(body);
    const name = head.dataset.name ?? head.textContent.toLowerCase();
    table.querySelector('.order').textContent = `Sorted by ${name}, ${ways[kind][up ? 0 : 1]}.`;
  };

  tables.forEach((table) => {
    const heads = [...table.tHead.rows[0].cells];
    heads.forEach((head, column) => {
      const button = document.createElement('button');
      button.type = 'button';
      button.append(...head.childNodes);
      button.addEventListener('click', () => sort(table, heads, column));
      head.append(button);
    });
    table.querySelector('.order').setAttribute('aria-live', 'polite');
    table.classList.add('sortable');
  });

  const plain = (text) => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  const texts = new Map();
  const text = (row) => {
    if (!texts.has(row)) {
      texts.set(row, plain([...row.cells].map((cell) => cell.textContent).join(' ')));
    }
    return texts.get(row);
  };

  if (rows.length > 1) {
    const line = document.createElement('p');
    const label = document.createElement('label');
    const input = document.createElement('input');
    const count = document.createElement('output');
    line.className = 'filter whole-list';
    input.type = 'search';
    input.autocomplete = 'off';
    label.append('Show only those with ', input);
    line.append(label, count);
    document.querySelector('main > section').before(line);
    let waiting = false;
    const filter = () => {
      waiting = false;
      const wanted = plain(input.value).split(/\s+/).filter(Boolean);
      let shown = 0;
      rows.forEach((row) => {
        const fits = wanted.every((word) => text(row).includes(word));
        shown += fits ? 1 : 0;
        if (row.hidden === fits) {
          row.hidden = !fits;
        }
      });
      count.textContent = wanted.length ? `${shown} of ${rows.length} vehicles` : '';
      line.classList.toggle('whole-list', !wanted.length);
    };
    input.addEventListener('input', () => {
      if (!waiting) {
        waiting = true;
        requestAnimationFrame(filter);
      }
    });
  }
})();
