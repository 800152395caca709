// Signs without words, drawings without names, headings out of order, links to nowhere.
const faults = [];
for (const v of document.querySelectorAll('.verdict')) {
  const shape = v.querySelector('svg use'), word = v.textContent.trim();
  const box = v.querySelector('svg').getBoundingClientRect();
  if (v.checkVisibility() && (box.width < 8 || box.height < 8)) faults.push('sign of ' + word + ' is not seen');
  const target = shape && document.querySelector(shape.getAttribute('href'));
  if (!target) faults.push('no sign for ' + word);
  if (shape.getAttribute('href') !== '#sign-' + word.replaceAll(' ', '-')) faults.push('sign and word differ: ' + word);
}
for (const svg of document.querySelectorAll('svg')) {
  if (svg.closest('[aria-hidden=true]')) continue;
  const by = (svg.getAttribute('aria-labelledby') || '').split(' ').filter(id => id);
  const words = by.length ? by.map(id => (document.getElementById(id) || {textContent: ''}).textContent).join(' ')
    : (svg.querySelector(':scope > title') || {textContent: svg.getAttribute('aria-label') || ''}).textContent;
  if (!words.trim()) faults.push('a drawing without words in ' + svg.closest('[id]').id);
}
let level = 0;
for (const h of document.querySelectorAll('h1, h2, h3, h4, h5, h6')) {
  const now = Number(h.localName[1]);
  if (now > level + 1) faults.push(h.localName + ' after h' + level + ': ' + h.textContent);
  if (!h.textContent.trim()) faults.push('empty ' + h.localName);
  level = now;
}
for (const a of document.querySelectorAll('a[href^="#"]')) {
  if (!document.getElementById(decodeURIComponent(a.hash.slice(1)))) faults.push('link to nowhere: ' + a.hash);
}
return faults.slice(0, 30);
