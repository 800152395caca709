// What cannot be seen to have the focus, or has it behind the line that stays at the foot.
const name = arguments[0], faults = [];
const bar = document.querySelector('.shown, .bar');
let seen = 0;
for (const el of document.querySelectorAll('a[href], summary, input:enabled, button:enabled, textarea')) {
  if (!el.checkVisibility({visibilityProperty: true})) continue;
  seen++;
  el.focus({focusVisible: true});
  const said = name + ': ' + el.localName + ' "' + el.textContent.trim().slice(0, 40) + '"';
  if (document.activeElement !== el) {
    faults.push(said + ' takes no focus');
    continue;
  }
  const style = getComputedStyle(el);
  if (style.outlineStyle === 'none' || parseFloat(style.outlineWidth) < 2) faults.push(said + ' shows no focus');
  const box = el.getBoundingClientRect();
  if (box.bottom < 0 || box.top > innerHeight) faults.push(said + ' is out of sight');
  const foot = bar && bar.checkVisibility() ? bar.getBoundingClientRect() : null;
  if (foot && !bar.contains(el) && box.bottom > foot.top + 1 && box.top < foot.bottom - 1) {
    faults.push(said + ' is behind the line at the foot');
  }
}
if (seen < 5) faults.push(name + ': only ' + seen + ' stops');
return faults.slice(0, 20);
