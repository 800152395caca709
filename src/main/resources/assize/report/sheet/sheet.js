
(() => {
  const page = JSON.parse(document.getElementById('data').textContent);
  const kinds = kindsOf(page);
  const faultOf = faultsOf(page);
  const texts = Object.entries(page.fields).filter(([, [kind]]) => kind === 'TEXT');
  const items = new Map();
  const nothing = () => ({sheet: {}, items: {}});
  const own = {text: page.text, marked: page.marked, file: page.file, tree: page.tree};
  let base = own;
  let record;
  let answers = nothing();
  let saved = JSON.stringify(answers);
  let keeps = true;

  document.documentElement.classList.add('filled-in');

  const say = (words) => {
    told.textContent = words;
  };

  const setBase = (next) => {
    base = next;
    record = recordOf({text: base.text, root: base.tree ? unpack(base.tree, base.text) : readYaml(base.text)}, page);
    store.of(base.text);
  };

  const isNothing = (some) => Object.keys(some.sheet).length + Object.keys(some.items).length === 0;

  /* Says whether what was kept is answers to this rule set: any page from a file may have changed it. */
  const isSound = (some) => {
    const isText = (value) => typeof value === 'string';
    const isGroup = (value, names) =>
      value !== null && typeof value === 'object' && names.every((name) => isText(value[name]));
    const isAnswer = ([name, value]) => {
      switch (kinds.item.get(name)) {
        case 'COLOR': return isGroup(value, ['chip', 'l', 'a', 'b', 'u']);
        case 'DEPARTURE': return isGroup(value, ['reason', 'explanation']);
        case 'PHOTOS': return Array.isArray(value) && value.every((one) => isGroup(one, ['file', 'caption']));
        default: return isText(value) && kinds.item.has(name);
      }
    };
    return Object.entries(some.sheet).every(([name, value]) => kinds.sheet.has(name) && isText(value))
      && Object.entries(some.items).every(([id, fields]) => page.order.includes(id) && Object.entries(fields).every(isAnswer));
  };

  /*
   * What is kept in the browser, where every page from a file can read it: answers, each under a
   * digest of the text that they were given to, and never that text.
   */
  const store = (() => {
    const {key} = page;
    const prefix = `${key}:answers-to:`;
    let slot = null;
    let storage = null;
    try {
      storage = window.localStorage;
      storage.setItem(`${key}:try`, 'x');
      storage.removeItem(`${key}:try`);
    } catch (e) {
      storage = null;
    }
    keeps = storage !== null;
    const parsed = (name) => {
      try {
        return JSON.parse(storage?.getItem(name) ?? null);
      } catch (e) {
        return null;
      }
    };
    const read = (name) => {
      try {
        const {answers: kept, saved: before} = parsed(name);
        return isSound(kept) ? {answers: kept, saved: String(before)} : null;
      } catch (e) {
        return null;
      }
    };
    const isDue = (some) => some !== null && JSON.stringify(some.answers) !== some.saved;
    const names = () => Object.keys(storage ?? {});
    /* Others that wait for their record, and are in no file yet. */
    const waiting = () => names().filter((name) => name.startsWith(prefix) && name !== slot && isDue(read(name)));

    /*
     * An earlier version kept whole records, which go. Its answers to this vehicle are kept on as
     * they are now; those to another stay for its own page while they are in no file.
     */
    names().filter((name) => /^assize-sheet:[0-9a-f]{64}:[A-Za-z0-9-]+:record$/.test(name)).forEach((name) => {
      const owner = name.slice(0, -':record'.length);
      const kept = read(owner);
      const text = parsed(name)?.text;
      if (owner !== key && isDue(kept)) {
        return;
      }
      storage.removeItem(name);
      storage.removeItem(owner);
      if (owner === key && kept) {
        const digest = prefix + (typeof text === 'string' ? digestOf(text) : 'unknown');
        storage.setItem(storage.getItem(digest) === null ? digest : `${prefix}earlier`, JSON.stringify(kept));
      }
    });

    return {
      of: (text) => {
        slot = prefix + digestOf(text);
      },
      now: () => slot,
      isOwn: (name) => name === slot || name === null,
      read: () => read(slot),
      write: () => {
        if (!keeps) {
          return;
        }
        try {
          if (isNothing(answers) && !isUnsaved()) {
            storage.removeItem(slot);
          } else {
            storage.setItem(slot, JSON.stringify({answers, saved}));
          }
        } catch (e) {
          keeps = false;
          tellKept();
          say('This browser has stopped keeping your answers. Save them to a file now.');
        }
      },
      drop: (name) => storage?.removeItem(name),
      isAnyWaiting: () => waiting().length > 0,
      take: () => {
        const [name] = waiting();
        const kept = read(name);
        storage.removeItem(name);
        return kept.answers;
      },
      forget: () => names().filter((name) => name === key || name.startsWith(`${key}:`)).forEach((name) => storage.removeItem(name)),
    };
  })();

  const isUnsaved = () => JSON.stringify(answers) !== saved;

  /* Sets one answer; one that is again what the record says is no answer. */
  const same = (a, b) => JSON.stringify(a) === JSON.stringify(b);
  const answer = (id, name, value) => {
    const fields = answers.items[id] ?? {};
    const before = name === 'photos' ? [] : record.says(id, name).value;
    if (same(value, before)) {
      delete fields[name];
    } else {
      fields[name] = value;
    }
    if (Object.keys(fields).length === 0) {
      delete answers.items[id];
    } else {
      answers.items[id] = fields;
    }
    changed(items.get(id));
  };
  const valueOf = (id, name) => answers.items[id]?.[name] ?? (name === 'photos' ? [] : record.says(id, name).value);

  const answerSheet = (name, value) => {
    if (value === record[name]) {
      delete answers.sheet[name];
    } else {
      answers.sheet[name] = value;
    }
    changed(null);
  };

  /* Paper shows what was filled in too. */
  const onPaper = (box, value) => {
    const chosen = typeof value === 'string' ? value : value.chip;
    const ticks = [...box.querySelectorAll('.tick[data-word]')];
    ticks.forEach((tick) => tick.firstElementChild.classList.toggle('ticked', tick.dataset.word === chosen));
    const free = ticks.some((tick) => tick.dataset.word === chosen) ? '' : chosen;
    box.querySelectorAll('[data-line]').forEach((line) => {
      const name = line.dataset.line;
      line.textContent = name === 'word' || name === 'typed' ? free : value[name] ?? '';
      if (name === 'word') {
        line.parentElement.firstElementChild.classList.toggle('ticked', free !== '');
      }
    });
  };

  const aspect = (item, box) => {
    const word = box.dataset.aspect;
    const {kind, list, choices, named} = page.items[item.id][word];
    const [, spoken, many] = page.fields[word];
    const fill = make('div', {className: 'fill'});
    const odd = make('p', {className: 'hint', hidden: true},
      'The record has this in a form that this sheet has no field for. It stays as it is unless you choose something here.');
    const clear = button('Clear', {className: 'clear', 'aria-label': `Clear ${spoken} of item ${item.number}`});
    const take = (value) => {
      answer(item.id, word, value);
      look();
    };
    const fields = fieldsOf(kind, fill, {
      choices: choices ?? page.lists[list] ?? [], named: named ?? [], bands: page.bands,
      what: many, label: box.querySelector('legend').textContent,
      fault: (value) => faultOf(word, value), names: namesUnder(page, word),
    }, take);
    const empty = kind === 'COLOR' ? {chip: '', l: '', a: '', b: '', u: ''} : '';
    const look = () => {
      const value = valueOf(item.id, word);
      clear.hidden = fields.isEmpty(value);
      onPaper(box.querySelector('.paper'), value);
    };
    clear.addEventListener('click', () => {
      fields.show(empty);
      take(empty);
      box.querySelector('input, summary')?.focus();
    });
    fill.prepend(odd);
    fill.append(clear);
    box.append(fill);
    return {
      show: () => {
        fields.show(valueOf(item.id, word));
        odd.hidden = !record.says(item.id, word).odd;
        look();
      },
      isEmpty: () => fields.isEmpty(valueOf(item.id, word)) && odd.hidden,
    };
  };

  const capital = (words) => words.charAt(0).toUpperCase() + words.slice(1);

  /* What is said in a person's own words. */
  const remark = (item, box, name, spoken) => {
    const input = make('textarea', {rows: 3});
    const doubt = doubtful();
    const look = () => {
      const value = valueOf(item.id, name);
      doubt.textContent = faultOf(name, value);
      box.querySelector(`[data-line="${name}"]`).textContent = value;
    };
    input.addEventListener('input', () => {
      answer(item.id, name, yamlText.clean(input.value).trim());
      look();
    });
    return {
      parts: [field(capital(spoken), input), doubt],
      isEmpty: () => valueOf(item.id, name) === '',
      show: () => {
        input.value = valueOf(item.id, name);
        look();
      },
    };
  };

  /* Texts, departure and photos of an item, folded in. */
  const remarks = (item, box) => {
    const said = texts.map(([name, [, spoken]]) => remark(item, box, name, spoken));
    const what = capital([...texts.map(([, [, spoken]]) => spoken), 'departure', 'photos'].join(', '));
    const fold = make('details', {className: 'fill more'}, make('summary', {}, what));
    const reason = make('input', {type: 'text', autocomplete: 'off'});
    const explanation = make('textarea', {rows: 2});
    const doubt = doubtful();
    const photoDoubt = doubtful();
    const look = () => {
      const departure = valueOf(item.id, 'departure');
      doubt.textContent = faultOf('departure', departure)
        || (departure.reason === '' && departure.explanation !== '' ? 'Without a reason the record says “not given”.' : '');
    };
    const lookAtPhotos = () => {
      photoDoubt.textContent = faultOf('photos', valueOf(item.id, 'photos'));
    };
    const reasons = make('div', {className: 'reasons'}, ...page.reasons.map((word) => {
      const one = button(word);
      one.addEventListener('click', () => {
        reason.value = word;
        depart();
      });
      return one;
    }));
    const depart = () => {
      answer(item.id, 'departure', {reason: yamlText.clean(reason.value).trim(), explanation: yamlText.clean(explanation.value).trim()});
      look();
    };
    reason.addEventListener('input', depart);
    explanation.addEventListener('input', depart);
    const cited = make('ul', {className: 'plain cited'});
    const photos = make('div', {className: 'photos'});
    const rows = () => [...photos.children].map((row) => {
      const [file, caption] = row.querySelectorAll('input');
      return {file: yamlText.clean(file.value).trim(), caption: yamlText.clean(caption.value).trim()};
    });
    const noted = () => answer(item.id, 'photos', rows().filter(({file, caption}) => file + caption !== ''));
    const addPhoto = ({file, caption}) => {
      const name = typed({value: file, placeholder: ''});
      const words = make('input', {type: 'text', autocomplete: 'off', value: caption});
      const away = button('Take out');
      const row = make('div', {className: 'photo-row'}, field('File', name), field('What it shows', words), away);
      name.addEventListener('input', noted);
      words.addEventListener('input', noted);
      name.addEventListener('change', lookAtPhotos);
      words.addEventListener('change', lookAtPhotos);
      away.addEventListener('click', () => {
        row.remove();
        noted();
        lookAtPhotos();
        add.focus();
      });
      photos.append(row);
      return name;
    };
    const add = button('Note a photo');
    add.addEventListener('click', () => addPhoto({file: '', caption: ''}).focus());
    fold.append(
      ...said.flatMap(({parts}) => parts),
      make('fieldset', {className: 'part'}, make('legend', {}, 'Not right, and on purpose'), reasons, field('Reason', reason),
        field('Why', explanation), doubt),
      make('fieldset', {className: 'part'}, make('legend', {}, 'Photos'), cited, photos, photoDoubt,
        make('p', {className: 'hint'}, 'The file as it will be named in the record’s folder, as in photos/lamp.jpg.'), add));
    box.append(fold);
    const isEmpty = () => {
      const departure = valueOf(item.id, 'departure');
      return said.every((one) => one.isEmpty()) && departure.reason + departure.explanation === '' && valueOf(item.id, 'photos').length === 0;
    };
    return {
      isEmpty,
      show: () => {
        said.forEach((one) => one.show());
        reason.value = valueOf(item.id, 'departure').reason;
        explanation.value = valueOf(item.id, 'departure').explanation;
        cited.replaceChildren(...record.cites(item.id).map(({name, what, caption}) =>
          make('li', {}, [name, what, caption].filter(Boolean).join(': '))));
        photos.replaceChildren();
        valueOf(item.id, 'photos').forEach(addPhoto);
        look();
        lookAtPhotos();
        fold.open ||= !isEmpty();
      },
    };
  };

  const build = (box) => {
    const id = box.dataset.item;
    const item = {id, box, number: box.querySelector('.place').textContent, area: box.closest('section').id};
    const state = make('p', {className: 'state fill'});
    box.querySelector('h3').after(state);
    item.state = state;
    item.aspects = [...box.querySelectorAll('.aspect')].map((one) => aspect(item, one));
    item.remarks = remarks(item, box.querySelector('.answers'));
    box.querySelector('h3').tabIndex = -1;
    items.set(id, item);
  };

  /* How much of an item is noted: nothing, a part, or all. */
  const stateOf = (item) => {
    const empty = item.aspects.filter((one) => one.isEmpty()).length;
    return empty === 0 ? 'all' : empty < item.aspects.length || !item.remarks.isEmpty() ? 'part' : 'nothing';
  };
  const look = (item) => {
    const state = stateOf(item);
    item.box.dataset.state = state;
    const left = item.aspects.filter((one) => one.isEmpty()).length;
    item.state.textContent = {all: 'Noted', part: `Noted in part, ${left} left`, nothing: ''}[state];
  };

  const count = () => {
    const all = [...items.values()];
    const left = (some) => some.filter((item) => item.box.dataset.state === 'nothing').length;
    const parts = all.filter((item) => item.box.dataset.state === 'part').length;
    document.querySelectorAll('[data-area]').forEach((place) => {
      const own = all.filter((item) => item.area === `area-${place.dataset.area}`);
      place.textContent = `${left(own)} of ${own.length} left`;
    });
    tally.textContent = `${left(all)} of ${all.length} left` + (parts > 0 ? `, ${parts} in part` : '');
    next.disabled = left(all) + parts === 0;
  };

  const changed = (item) => {
    if (item) {
      look(item);
      count();
    }
    store.write();
    tellUnsaved();
  };

  const showAll = () => {
    items.forEach((item) => {
      item.aspects.forEach((one) => one.show());
      item.remarks.show();
      look(item);
    });
    by.value = answers.sheet.by ?? record.by;
    on.value = answers.sheet.on ?? record.on;
    lookAtHead();
    paperHead();
    count();
    tellUnsaved();
    shown.value = '';
    asText.open = false;
  };
  const paperHead = () => {
    document.querySelector('[data-line="by"]').textContent = by.value;
    document.querySelector('[data-line="on"]').textContent = on.value;
  };

  /* The item that was last looked at or answered; a finger leaves no focus on some devices. */
  let here = null;
  document.addEventListener('focusin', (event) => {
    here = event.target.closest('.item') ?? here;
  });
  document.addEventListener('change', (event) => {
    here = event.target.closest('.item') ?? here;
  });

  const goTo = (item) => {
    const head = item.box.querySelector('h3');
    item.box.scrollIntoView({block: 'start'});
    head.focus({preventScroll: true});
  };

  /* The next with nothing noted, from where the reader was; else the next noted in part. */
  const goOn = () => {
    const all = [...items.values()];
    const from = all.findIndex((item) => item.box === here) + 1;
    const round = [...all.slice(from), ...all.slice(0, from)];
    const found = round.find((item) => item.box.dataset.state === 'nothing')
      ?? round.find((item) => item.box.dataset.state === 'part');
    if (found) {
      goTo(found);
    }
  };

  const goToNumber = () => {
    const wanted = where.value.trim();
    const found = [...items.values()].find((item) => item.number === wanted);
    if (found) {
      where.value = '';
      say('');
      goTo(found);
    } else {
      say(`This sheet has no item ${wanted || 'without a number'}${/^\d+$/.test(wanted) ? ': it does not apply to this vehicle' : ''}.`);
      where.focus();
    }
  };

  /* Saving. Should answers ever not go into the record's text, they go into a record of their own. */
  const written = () => {
    try {
      return {text: record.write(answers), file: base.file, marked: base.marked};
    } catch (e) {
      const {vehicle} = document.documentElement.dataset;
      const text = `record: ${page.record}\nrules: ${yamlText.of(record.rules)}\nvehicle: {name: ${yamlText.of(vehicle)}}\n`;
      return {
        text: recordOf({text, root: readYaml(text)}, page).write(answers), file: `answers-to-${base.file}`, marked: false,
      };
    }
  };

  /* Says where an answer stands that the program would refuse, and goes there; whether there is one. */
  const isFaulty = () => {
    const inSheet = Object.entries(answers.sheet).map(([name, value]) => ({name, value}));
    const inItems = Object.entries(answers.items).flatMap(([id, fields]) =>
      Object.entries(fields).map(([name, value]) => ({id, name, value})));
    const fault = [...inSheet, ...inItems].find(({name, value}) => faultOf(name, value) !== '');
    if (!fault) {
      return false;
    }
    const item = items.get(fault.id);
    const what = {by: 'looked at by', on: 'the day'}[fault.name] ?? page.fields[fault.name]?.[1] ?? fault.name;
    const place = fault.id === undefined ? what : `item ${item ? item.number : fault.id}, ${what}`;
    say(`Nothing was saved, since Assize would refuse the record (${place}). ${faultOf(fault.name, fault.value)}`);
    if (item) {
      goTo(item);
    } else if (fault.id === undefined) {
      (fault.name === 'by' ? by : on).focus();
    }
    return true;
  };

  let address = null;
  const save = () => {
    if (isFaulty()) {
      return;
    }
    const {text, file, marked} = written();
    if (isTooLarge(text, marked)) {
      say('Nothing was saved: the record would have more than 4 MiB, and Assize reads no more. Shorten your notes.');
      return;
    }
    const blob = new Blob([marked ? '\ufeff' : '', text], {type: 'application/yaml'});
    if (address) {
      URL.revokeObjectURL(address);
    }
    address = URL.createObjectURL(blob);
    again.href = address;
    again.download = file;
    again.textContent = `Save ${file} once more`;
    again.hidden = false;
    again.click();
    saved = JSON.stringify(answers);
    store.write();
    tellUnsaved();
    say(`Saved as ${file}; look where your browser puts what it downloads.`
      + (file === base.file ? '' : ` Only your answers are in it: they could not be put into ${base.file}.`));
  };

  /* Opening a record. */
  const places = (text, at) => text.slice(0, at).split(/\r\n|\n|\r/).length;
  const check = (opened) => {
    const parts = new Map(readYaml(opened.text).group.map((part) => [part.key, part]));
    const lines = (node) => node.text !== undefined || node.list;
    const refuse = (part, words) => {
      throw new Refused(words, part.at);
    };
    if (!parts.has('record') || !parts.has('rules')) {
      throw new Refused(parts.has('rule_set') ? 'this is a rule set, not a record' : 'a record begins with “record:” and “rules:”', 0);
    }
    ['observations', 'evidence', 'inspected'].map((key) => parts.get(key)).filter(Boolean).forEach((part) => {
      if (lines(part.node)) {
        refuse(part, `a group of names should stand under “${part.key}”`);
      }
    });
    parts.get('observations')?.node.group?.forEach((part) => {
      if (lines(part.node)) {
        refuse(part, `a group of names should stand under “${part.key}”`);
      }
    });
  };

  /* Begins with what was kept, or with nothing. */
  const begin = (kept) => {
    answers = kept?.answers ?? nothing();
    saved = kept?.saved ?? JSON.stringify(answers);
  };

  const open = async (file) => {
    let text;
    if (file.size > limits.file) {
      say(`${file.name} was not opened: it has more than 4 MiB, and Assize reads no more.`);
      return;
    }
    try {
      text = new TextDecoder('utf-8', {fatal: true, ignoreBOM: true}).decode(await file.arrayBuffer());
    } catch (e) {
      say(`${file.name} was not opened: it is not text in UTF-8. Save it as UTF-8 and open it again.`);
      return;
    }
    const marked = text.startsWith('\ufeff');
    const opened = {text: marked ? text.slice(1) : text, marked, file: file.name};
    try {
      check(opened);
      const left = store.now();
      setBase(opened);
      store.drop(left);
    } catch (e) {
      if (!(e instanceof Refused)) {
        throw e;
      }
      say(`${file.name} was not opened and is unchanged. Line ${places(opened.text, e.at)}: ${e.message}. `
        + `Put that right, or make a sheet from the record itself: assize sheet ${file.name}`);
      return;
    }
    const before = store.read();
    begin(before);
    showAll();
    const known = new Set(page.order);
    const foreign = record.items.filter((id) => !items.has(id));
    const strange = foreign.filter((id) => !known.has(id));
    say([
      `${file.name} is open.`,
      before ? 'Your answers to it from before are here again.' : '',
      record.id === page.record ? '' : `It is the record ${record.id}; this sheet was made for ${page.record}, to which other items may apply.`,
      foreign.length > 0 ? `${foreign.length} of its items are not on this sheet and stay as they are${strange.length > 0 ? `; the standard has no ${strange.slice(0, 3).join(', ')}` : ''}.` : '',
    ].filter(Boolean).join(' '));
  };

  /* What stands above the items. */
  const told = make('p', {className: 'told', role: 'status'});
  const kept = make('p', {className: 'kept'});
  const unsaved = make('p', {className: 'unsaved'});
  const by = make('input', {type: 'text', autocomplete: 'off'});
  const on = typed({inputMode: 'text'});
  const headDoubt = doubtful();
  const today = button('Today');
  const picker = make('input', {type: 'file', accept: '.yaml,.yml,.txt', id: 'picker'});
  const again = make('a', {hidden: true, className: 'again', rel: 'noreferrer'});
  const forget = button('Forget what is kept here', {id: 'forget'});
  const sure = make('div', {className: 'sure', hidden: true});
  const use = button('Use them here', {id: 'use'});
  const waiting = make('div', {className: 'sure', id: 'waiting', hidden: true},
    make('p', {}, 'Answers to another text of this record are kept here too, and are in no file yet. Open that record to go '
      + 'on with them, or use them on this one before you answer anything.'), use);
  const shown = make('textarea', {rows: 8, readOnly: true, spellcheck: false});
  const asText = make('details', {className: 'more'}, make('summary', {}, 'Show the record as text, to copy it'), field('The record', shown));
  const tally = make('output', {className: 'tally-left'});
  const next = button('Next');
  const where = typed({inputMode: 'numeric', maxLength: 5, className: 'where'});
  const go = button('Go');
  const keep = button('Save', {className: 'main'});

  const tellKept = () => {
    kept.classList.toggle('warning', !keeps);
    kept.textContent = keeps
      ? 'Your answers are kept in this browser on this device as you go, until you press “Forget what is kept here” or clear '
        + 'the browser’s data; the record itself is not. Until then other pages that you open from files on this device can '
        + 'read your answers. Only a saved file is safe.'
      : 'This browser does not let a page from a file keep anything. Your answers are lost when you close or reload this '
        + 'page: save them to a file before, and in between.';
    forget.hidden = !keeps;
  };
  const tellUnsaved = () => {
    waiting.hidden = !store.isAnyWaiting();
    use.disabled = !isNothing(answers);
    unsaved.textContent = isUnsaved() ? 'There are answers that are not in a file yet.' : '';
    keep.classList.toggle('due', isUnsaved());
  };

  /* Asks before what is not in a file goes. */
  const ask = (words, yes, act, isDue = isUnsaved()) => {
    if (!isDue) {
      act();
      return;
    }
    const no = button('Leave everything as it is');
    const go = button(yes);
    const end = () => {
      sure.hidden = true;
      sure.replaceChildren();
    };
    no.addEventListener('click', end);
    go.addEventListener('click', () => {
      end();
      act();
    });
    sure.replaceChildren(make('p', {}, words), no, go);
    sure.hidden = false;
    no.focus();
  };

  const lookAtHead = () => {
    headDoubt.textContent = faultOf('by', answers.sheet.by ?? '') || faultOf('on', answers.sheet.on ?? '');
  };
  by.addEventListener('input', () => {
    answerSheet('by', yamlText.clean(by.value).trim());
    lookAtHead();
    paperHead();
  });
  const dated = () => {
    answerSheet('on', yamlText.clean(on.value).trim());
    lookAtHead();
    paperHead();
  };
  on.addEventListener('input', dated);
  today.addEventListener('click', () => {
    const now = new Date();
    on.value = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
    dated();
  });
  picker.addEventListener('change', () => {
    const file = picker.files[0];
    picker.value = '';
    if (file) {
      ask(`There are answers that are not in a file yet. Opening ${file.name} drops them.`, 'Drop them and open it', () => open(file));
    }
  });
  forget.addEventListener('click', () => ask('There are answers that are not in a file yet. Forgetting drops them.', 'Drop them', () => {
    store.forget();
    setBase(own);
    begin(null);
    showAll();
    say('Nothing is kept in this browser any more. The sheet is as it was made.');
  }, isUnsaved() || store.isAnyWaiting()));
  use.addEventListener('click', () => {
    const {sheet, items: some} = store.take();
    Object.entries(sheet).forEach(([name, value]) => answerSheet(name, value));
    Object.entries(some).forEach(([id, fields]) => Object.entries(fields).forEach(([name, value]) => answer(id, name, value)));
    showAll();
    say('Those answers are on this sheet now. Where the record says something else, they stand in its place.');
  });
  asText.addEventListener('toggle', () => {
    shown.value = asText.open && !isFaulty() ? written().text : '';
  });
  next.addEventListener('click', goOn);
  go.addEventListener('click', goToNumber);
  where.addEventListener('keydown', (event) => {
    if (event.key === 'Enter') {
      goToNumber();
    }
  });
  keep.addEventListener('click', save);
  window.addEventListener('beforeunload', (event) => {
    if (isUnsaved()) {
      event.preventDefault();
      event.returnValue = 'unsaved';
    }
  });
  window.addEventListener('storage', (event) => {
    if (store.isOwn(event.key)) {
      begin(store.read());
      showAll();
      say('This sheet is open a second time; what was changed there is shown here too.');
    }
  });

  document.getElementById('desk').append(
    make('section', {className: 'desk whole', 'aria-labelledby': 'desk-title'},
      make('h2', {id: 'desk-title'}, 'Filling it in'),
      kept,
      make('div', {className: 'pair'}, field('Looked at by', by), field('on', on, today)),
      headDoubt,
      make('div', {className: 'pair'},
        make('p', {className: 'field'}, make('label', {htmlFor: 'picker'}, 'Open a record that was saved before'), picker), forget),
      sure,
      waiting,
      make('p', {className: 'hint'}, 'Photos stay in your camera: note their names at the items, and put the files beside the record later.'),
      asText));
  document.querySelector('main').after(
    make('div', {className: 'bar', role: 'region', 'aria-label': 'How far it has come'},
      make('div', {className: 'told-line'}, told, again, unsaved),
      make('div', {className: 'keys'}, tally, next,
        make('span', {className: 'number-to'}, make('label', {htmlFor: 'where'}, 'No.'), Object.assign(where, {id: 'where'}), go), keep)));
  document.querySelectorAll('.item').forEach(build);

  setBase(own);
  const before = store.read();
  begin(before);
  if (before) {
    say('Your answers from before are here again.');
  }
  tellKept();
  showAll();
})();
