// What stands past the right or left edge of the page, and text that its own box cuts off.
const faults = [];
const root = document.documentElement;
const name = arguments[0];
const path = el => {
  const near = el.closest('[id]');
  const kind = (el.getAttribute('class') || '').trim().split(/\s+/).filter(c => c).join('.');
  return (near && near !== el ? '#' + near.id + ' ' : '') + el.localName + (el.id ? '#' + el.id : '') + (kind ? '.' + kind : '');
};
if (root.scrollWidth > root.clientWidth) {
  faults.push(name + ': the page scrolls sideways, ' + root.scrollWidth + ' over ' + root.clientWidth);
}
for (const el of document.body.querySelectorAll('*')) {
  if (el.closest('.spoken, .skip, .signs, .reflow thead') || !el.checkVisibility({visibilityProperty: true})) continue;
  const box = el.getBoundingClientRect();
  if (box.width === 0 || el.closest('symbol')) continue;
  if (box.right > root.clientWidth + 1 || box.left < -1) {
    faults.push(name + ': ' + path(el) + ' reaches from ' + Math.round(box.left) + ' to ' + Math.round(box.right));
  }
  const style = getComputedStyle(el);
  if (el instanceof HTMLElement && style.overflowX !== 'visible' && el.scrollWidth > el.clientWidth + 1) {
    faults.push(name + ': ' + path(el) + ' cuts its text off');
  }
}
return faults.slice(0, 20);
