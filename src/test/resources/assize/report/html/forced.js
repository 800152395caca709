// Parts of drawings that cannot be told apart where the reader's own colors are forced.
const name = arguments[0], faults = new Set();
const ground = getComputedStyle(document.documentElement).backgroundColor;
const look = el => {
  const s = getComputedStyle(el);
  return s.fill + ' ' + (s.stroke === 'none' ? '' : s.stroke + ' ' + s.strokeDasharray);
};
if (!matchMedia('(forced-colors: active)').matches) faults.add(name + ': colors are not forced');
let seen = 0;
for (const svg of document.querySelectorAll('svg.drawing')) {
  const looks = new Map();
  for (const part of svg.querySelectorAll('.sure, .may, .range, .range-second, .dot')) {
    seen++;
    const kind = part.getAttribute('class');
    const style = getComputedStyle(part);
    if (style.fill === ground && (style.stroke === 'none' || style.stroke === ground)) faults.add(name + ': ' + kind + ' is not seen');
    looks.set(look(part), (looks.get(look(part)) || new Set()).add(kind));
  }
  for (const kinds of looks.values()) {
    if (kinds.size > 1) faults.add(name + ': ' + [...kinds].join(' and ') + ' look the same');
  }
  for (const text of svg.querySelectorAll('text')) {
    if (getComputedStyle(text).fill === ground) faults.add(name + ': lettering is not seen');
  }
}
for (const sign of document.querySelectorAll('.verdict .sign')) {
  if (getComputedStyle(sign).color === ground) faults.add(name + ': a sign is not seen');
}
if (seen === 0 && document.querySelector('svg.drawing')) faults.add(name + ': no drawing has parts');
return [...faults];
