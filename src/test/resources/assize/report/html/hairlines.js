// Lines between rows that are too near to their ground: WCAG 2.2, success criterion 1.4.11, asks for 3 to 1.
const least = arguments[0], faults = new Set();
const linear = c => (c /= 255) <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
const light = color => {
  const [r, g, b] = color.match(/[\d.]+/g).map(Number).map(linear);
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const ground = light(getComputedStyle(document.documentElement).backgroundColor);
let seen = 0;
for (const cell of document.querySelectorAll('td, th, .item')) {
  const style = getComputedStyle(cell);
  if (style.borderBottomStyle === 'none' || parseFloat(style.borderBottomWidth) === 0) continue;
  seen++;
  const line = light(style.borderBottomColor);
  const ratio = (Math.max(line, ground) + 0.05) / (Math.min(line, ground) + 0.05);
  if (ratio < least) faults.add(cell.localName + ' has a line of ' + ratio.toFixed(2) + ' to 1');
}
if (seen < 5) faults.add('only ' + seen + ' lines');
return [...faults];
