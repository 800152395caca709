// Fills in an inspection sheet as a finger would: chooses, types, folds out. Returns what it could not.
const wanted = arguments[0], faults = [];
const type = (input, words) => {
  input.focus();
  input.value = words;
  input.dispatchEvent(new InputEvent('input', {bubbles: true}));
  input.dispatchEvent(new Event('change', {bubbles: true}));
};
const foldOut = (box) => box.querySelectorAll('details').forEach((fold) => {
  if (!fold.open) {
    fold.open = true;
    fold.dispatchEvent(new Event('toggle'));
  }
});
const choose = (box, word) => {
  const radio = [...box.querySelectorAll('input[type=radio]')].find((one) => one.value === word);
  if (radio) {
    radio.click();
  }
  return radio !== undefined;
};
for (const [id, fields] of Object.entries(wanted)) {
  const item = document.querySelector('[data-item="' + id + '"]');
  if (!item) {
    faults.push('no item ' + id);
    continue;
  }
  foldOut(item);
  for (const [field, value] of Object.entries(fields)) {
    const box = item.querySelector('[data-aspect="' + field + '"]');
    const texts = box ? [...box.querySelectorAll('input[type=text]')] : [];
    if (field === 'note') {
      type(item.querySelector('details.fill textarea'), value);
    } else if (field === 'departure') {
      const [reason, why] = item.querySelectorAll('details.fill fieldset :is(input, textarea)');
      type(reason, value.reason);
      type(why, value.explanation);
    } else if (field === 'photo') {
      [...item.querySelectorAll('details.fill button')].pop().click();
      const [file, caption] = [...item.querySelectorAll('.photo-row')].pop().querySelectorAll('input');
      type(file, value.file);
      type(caption, value.caption);
    } else if (!box) {
      faults.push(id + ' is not asked for its ' + field);
    } else if (field === 'color') {
      if (value.chip && !choose(box, value.chip)) {
        faults.push(id + ': no color ' + value.chip);
      }
      ['l', 'a', 'b', 'u'].forEach((key, i) => value[key] && type(texts[i], value[key]));
    } else if (!choose(box, value)) {
      if (texts.length === 0) {
        faults.push(id + ': no ' + field + ' ' + value);
      } else {
        type(texts[0], value);
      }
    }
  }
}
return faults;
