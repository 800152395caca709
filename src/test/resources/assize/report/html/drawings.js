// Words of drawings that leave their drawing, lie on each other, or are too small to read.
const faults = [], least = arguments[0], name = arguments[1];
const path = svg => '#' + svg.closest('[id]').id + ' "' + (svg.querySelector('title') || {textContent: ''}).textContent + '"';
let seen = 0;
for (const svg of document.querySelectorAll('svg.drawing')) {
  if (!svg.checkVisibility()) continue;
  const frame = svg.getBoundingClientRect();
  const words = [...svg.querySelectorAll('text')].map(t => ({text: t.textContent, box: t.getBoundingClientRect(), size: parseFloat(getComputedStyle(t).fontSize) * t.getScreenCTM().a}));
  for (const w of words) {
    seen++;
    if (w.box.left < frame.left - 1 || w.box.right > frame.right + 1 || w.box.top < frame.top - 1 || w.box.bottom > frame.bottom + 1) {
      faults.push(name + ': ' + path(svg) + ': "' + w.text + '" leaves the drawing');
    }
    if (w.size < least) {
      faults.push(name + ': ' + path(svg) + ': "' + w.text + '" is ' + w.size.toFixed(1) + ' px high');
    }
  }
  words.forEach((a, i) => words.slice(i + 1).forEach(b => {
    const across = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
    const down = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
    if (across > 1 && down > 4) {
      faults.push(name + ': ' + path(svg) + ': "' + a.text + '" lies on "' + b.text + '"');
    }
  }));
}
if (seen === 0) faults.push(name + ': no drawing has words');
return faults.slice(0, 30);
