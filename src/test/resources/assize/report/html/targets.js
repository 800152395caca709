// What a finger has to hit and is under 24 by 24 CSS px: WCAG 2.2, success criterion 2.5.8.
// Links in the run of a text are excepted there (the exception "inline").
const name = arguments[0], least = 24, faults = [];
document.querySelectorAll('details').forEach(d => d.open = true);
const path = el => '#' + (el.closest('[id]') || {id: ''}).id + ' ' + el.localName + ' "' + el.innerText.trim().slice(0, 40) + '"';
const inRun = el => {
  if (el.localName !== 'a' || !getComputedStyle(el).display.startsWith('inline')) return false;
  let block = el.parentElement;
  while (getComputedStyle(block).display.startsWith('inline')) block = block.parentElement;
  const rest = block.cloneNode(true);
  rest.querySelectorAll('a, .spoken').forEach(a => a.remove());
  return /\p{L}/u.test(rest.textContent);
};
let seen = 0;
for (const el of document.querySelectorAll('a[href], summary, button, input, label')) {
  if (!el.checkVisibility({visibilityProperty: true}) || el.closest('.spoken, .skip') || el.disabled) continue;
  seen++;
  const label = el.closest('label');
  if (inRun(el) || label && label !== el) continue;
  const box = el.getBoundingClientRect();
  if (box.width < least || box.height < least) {
    faults.push(name + ': ' + path(el) + ' is ' + box.width.toFixed(1) + ' by ' + box.height.toFixed(1));
  }
}
if (seen < 5) faults.push(name + ': only ' + seen + ' targets');
return faults;
