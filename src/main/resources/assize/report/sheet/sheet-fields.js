
/* Makes an element; what is given as text stays text. */
const make = (name, properties = {}, ...inside) => {
  const element = document.createElement(name);
  Object.entries(properties).forEach(([key, value]) => {
    if (key.includes('-') || ['role', 'autocorrect'].includes(key)) {
      element.setAttribute(key, value);
    } else {
      element[key] = value;
    }
  });
  element.append(...inside.filter((one) => one !== null));
  return element;
};

let countOfFields = 0;
const field = (label, input, ...more) => {
  input.id ||= `field-${++countOfFields}`;
  return make('p', {className: 'field'}, make('label', {htmlFor: input.id}, label), input, ...more);
};

const typed = (properties) =>
  make('input', {type: 'text', autocomplete: 'off', autocapitalize: 'off', spellcheck: false, autocorrect: 'off',
    ...properties});
const doubtful = () => make('p', {className: 'doubt', 'aria-live': 'polite'});
const button = (words, properties = {}) => make('button', {type: 'button', ...properties}, words);

const swatch = (hex) => {
  const space = 'http://www.w3.org/2000/svg';
  const svg = document.createElementNS(space, 'svg');
  svg.setAttribute('class', 'swatch');
  svg.setAttribute('viewBox', '0 0 10 10');
  svg.setAttribute('aria-hidden', 'true');
  const rect = document.createElementNS(space, 'rect');
  rect.setAttribute('width', '10');
  rect.setAttribute('height', '10');
  rect.setAttribute('fill', hex);
  svg.append(rect);
  return svg;
};

/*
 * The fields of one aspect. Each kind gives {show(value), isEmpty(value)} and tells what was chosen
 * to changed(value); box is where it stands.
 */
const fieldsOf = (() => {
  let groups = 0;

  /* Words of which one is chosen: those that somebody names at once, the others folded in. */
  const words = (box, {choices, named, what}, changed) => {
    const group = `choice-${++groups}`;
    const radios = new Map();
    const option = ([id, name, hex]) => {
      const radio = make('input', {type: 'radio', name: group, value: id});
      radio.addEventListener('change', () => changed(id));
      radios.set(id, radio);
      return make('label', {className: 'option'}, radio, hex ? swatch(hex) : null, make('span', {}, name));
    };
    const few = choices.length <= 9;
    const first = choices.filter(([id]) => few || named.includes(id) || id === 'other');
    const others = choices.filter((one) => !first.includes(one));
    const odd = make('p', {className: 'hint', hidden: true});
    box.append(make('div', {className: 'options'}, ...first.map(option)));
    let fold = null;
    const foldOut = () => {
      if (fold && !fold.dataset.made) {
        fold.dataset.made = 'yes';
        fold.append(make('div', {className: 'options'}, ...others.map(option)));
      }
    };
    if (others.length > 0) {
      fold = make('details', {className: 'more'}, make('summary', {}, `${others.length} more ${what}`));
      fold.addEventListener('toggle', foldOut);
      box.append(fold);
    }
    box.append(odd);
    return {
      show: (value) => {
        if (others.some(([id]) => id === value)) {
          foldOut();
          fold.open = true;
        }
        radios.forEach((radio, id) => {
          radio.checked = id === value;
        });
        const strange = value !== '' && !choices.some(([id]) => id === value);
        odd.hidden = !strange;
        odd.textContent = strange ? `The record says “${value}”, for which this sheet has no word.` : '';
      },
      isEmpty: (value) => value === '',
    };
  };

  const text = (box, {label, check, wide, mode}, changed) => {
    const input = typed({className: wide ? 'long' : ''});
    if (mode) {
      input.inputMode = mode;
    }
    const doubt = doubtful();
    const look = (value) => {
      doubt.textContent = check(value);
    };
    const read = () => yamlText.clean(input.value).trim();
    input.addEventListener('input', () => changed(read()));
    input.addEventListener('change', () => look(read()));
    box.append(field(label, input), doubt);
    return {
      input,
      show: (value) => {
        input.value = value;
        look(value);
      },
      isEmpty: (value) => value === '',
    };
  };

  const pieces = (box, options, changed) => {
    const one = text(box, {label: options.label, mode: 'numeric', check: options.fault}, changed);
    const [[least, most]] = options.names;
    const step = (by) => () => {
      const now = /^\d{1,7}$/.test(one.input.value) ? Number(one.input.value) : by > 0 ? -1 : 1;
      const next = String(Math.min(most, Math.max(least, now + by)));
      one.show(next);
      changed(next);
    };
    const less = button('−', {'aria-label': `One ${options.label.toLowerCase()} less`, className: 'step'});
    const more = button('+', {'aria-label': `One ${options.label.toLowerCase()} more`, className: 'step'});
    less.addEventListener('click', step(-1));
    more.addEventListener('click', step(1));
    one.input.before(less);
    one.input.after(more);
    return one;
  };

  const gloss = (box, options, changed) => {
    const holder = make('div');
    const bands = options.bands;
    const units = text(box, {label: 'Units', check: options.fault}, (value) => {
      changed(value);
      band.show('');
    });
    box.append(holder);
    const band = words(holder, {choices: bands.map((one) => [one, one, '']), named: [], what: 'bands'}, (value) => {
      units.show('');
      changed(value);
    });
    return {
      show: (value) => {
        const isBand = bands.includes(value);
        band.show(isBand ? value : '');
        units.show(isBand ? '' : value);
      },
      isEmpty: (value) => value === '',
    };
  };

  const color = (box, options, changed) => {
    let now = {chip: '', l: '', a: '', b: '', u: ''};
    const change = (some) => {
      now = {...now, ...some};
      changed(now);
    };
    box.append(make('p', {className: 'hint'}, 'Match it on the thing itself. A screen is never evidence of a color.'));
    const chip = words(box, {...options, what: 'colors'}, (value) => change({chip: value}));
    const fold = make('details', {className: 'more'}, make('summary', {}, 'Read by an instrument'));
    const numbers = make('div', {className: 'numbers'});
    const doubt = doubtful();
    const names = {l: 'L*', a: 'a*', b: 'b*', u: '±, one standard uncertainty'};
    const look = () => {
      doubt.textContent = options.fault(now);
    };
    const inputs = Object.entries(names).map(([key, label]) => {
      const input = typed({className: 'figure-field'});
      if (key === 'l' || key === 'u') {
        input.inputMode = 'decimal';
      }
      input.addEventListener('input', () => {
        change({[key]: yamlText.clean(input.value).trim().replace(/−/g, '-').replace(',', '.')});
      });
      input.addEventListener('change', look);
      numbers.append(field(label, input));
      return [key, input];
    });
    fold.append(numbers, doubt);
    box.append(fold);
    return {
      show: (value) => {
        now = value;
        chip.show(value.chip);
        inputs.forEach(([key, input]) => {
          input.value = value[key];
        });
        fold.open ||= value.l + value.a + value.b + value.u !== '';
        look();
      },
      isEmpty: ({chip: by, l, a, b, u}) => by + l + a + b + u === '',
    };
  };

  /* A unit is looked for and not looked up: that a size has a form of its own is no fault. */
  const size = (fault) => (value) =>
    fault(value) || (value === '' || /[A-Za-zµ°"'′″’”]/.test(value)
      ? ''
      : 'Write a number and its unit, as in 2.4 mm or 3/32 in.');

  return (kind, box, options, changed) => {
    switch (kind) {
      case 'COLOR': return color(box, options, changed);
      case 'GLOSS': return gloss(box, options, changed);
      case 'PIECES': return pieces(box, options, changed);
      case 'SIZE': return text(box, {label: options.label, check: size(options.fault), wide: true}, changed);
      case 'STAMPED': return text(box, {label: options.label, check: options.fault, wide: true}, changed);
      default: return words(box, options, changed);
    }
  };
})();
