// Text whose color is too near to what is behind it: WCAG 2.2, relative luminance and contrast ratio.
const least = arguments[0], theme = arguments[1], texts = arguments[2] || 500;
document.querySelectorAll('details').forEach(d => d.open = true);
const faults = new Map();
const seen = {count: 0};
const parse = text => {
  const n = text.match(/[\d.]+/g).map(Number);
  return {r: n[0], g: n[1], b: n[2], a: n.length > 3 ? n[3] : 1};
};
const over = (top, below) => ({
  r: top.r * top.a + below.r * (1 - top.a),
  g: top.g * top.a + below.g * (1 - top.a),
  b: top.b * top.a + below.b * (1 - top.a),
  a: 1});
const linear = c => (c /= 255) <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
const luminance = c => 0.2126 * linear(c.r) + 0.7152 * linear(c.g) + 0.0722 * linear(c.b);
const ratio = (a, b) => {
  const [x, y] = [luminance(a), luminance(b)];
  return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05);
};
const behind = el => {
  const layers = [];
  for (let at = el; at; at = at.parentElement) {
    const c = parse(getComputedStyle(at).backgroundColor);
    if (c.a > 0) layers.push(c);
    if (c.a === 1) break;
  }
  let below = {r: 255, g: 255, b: 255, a: 1};
  for (const layer of layers.reverse()) below = over(layer, below);
  return below;
};
const opacity = el => {
  let all = 1;
  for (let at = el; at; at = at.parentElement) all *= Number(getComputedStyle(at).opacity);
  return all;
};
const drawnBehind = (text, page) => {
  const own = getComputedStyle(text);
  // Lettering with a rim of three pixels or more stands on its rim.
  if (own.paintOrder.startsWith('stroke') && own.stroke !== 'none' && parseFloat(own.strokeWidth) >= 3) {
    return [over(parse(own.stroke), page)];
  }
  const svg = text.ownerSVGElement, box = text.getBBox(), found = [page];
  for (const shape of svg.querySelectorAll('rect, path')) {
    if (!(shape.compareDocumentPosition(text) & Node.DOCUMENT_POSITION_FOLLOWING)) continue;
    const style = getComputedStyle(shape);
    if (style.fill === 'none' || style.fill.startsWith('url')) continue;
    for (const part of [0.02, 0.25, 0.5, 0.75, 0.98]) {
      const point = new DOMPoint(box.x + box.width * part, box.y + box.height / 2);
      if (shape.isPointInFill(point)) {
        const fill = parse(style.fill);
        fill.a *= Number(style.fillOpacity) * Number(style.opacity);
        found.push(over(fill, page));
        break;
      }
    }
  }
  return found;
};
const path = el => {
  const near = el.closest('[id]');
  const kind = (el.getAttribute('class') || '').trim().split(/\s+/).filter(c => c).join('.');
  return (near && near !== el ? '#' + near.id + ' ' : '') + el.localName + (kind ? '.' + kind : '');
};
const check = (el, color, backgrounds, what) => {
  seen.count++;
  color.a *= opacity(el);
  for (const below of backgrounds) {
    const r = ratio(over(color, below), below);
    if (r < least) faults.set(path(el) + what, theme + ': ' + path(el) + what + ' has ' + r.toFixed(2) + ':1');
  }
};
const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
while (walk.nextNode()) {
  const el = walk.currentNode.parentElement;
  if (!walk.currentNode.data.trim() || !el.checkVisibility({visibilityProperty: true})) continue;
  if (el.closest('.spoken, title, desc')) continue;
  const style = getComputedStyle(el);
  if (el instanceof SVGElement) {
    check(el, parse(style.fill), drawnBehind(el, behind(el.ownerSVGElement)), '');
  } else {
    check(el, parse(style.color), [behind(el)], '');
  }
}
for (const el of document.body.querySelectorAll('*')) {
  for (const side of ['::before', '::after']) {
    const style = getComputedStyle(el, side);
    if (style.content === 'none' || style.content === 'normal' || !el.checkVisibility()) continue;
    check(el, parse(style.color), [behind(el)], side);
  }
}
if (seen.count < texts) faults.set('', 'only ' + seen.count + ' texts were looked at');
return [...faults.values()].slice(0, 30);
