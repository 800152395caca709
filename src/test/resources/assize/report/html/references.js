// Links inside the page that do not say on paper where they lead, or say it wrongly.
const faults = [];
const plain = text => text.replace(/[^0-9A-Z–]/g, '');
for (const link of document.querySelectorAll('main a[href^="#item-"], main a[href^="#dispute-"]')) {
  const target = document.getElementById(link.getAttribute('href').slice(1));
  const heading = target.matches('article') ? target.querySelector('h3, h4') : null;
  if (!heading || !link.checkVisibility() || link.closest('.elsewhere')) {
    continue;
  }
  const at = plain(getComputedStyle(heading, '::before').content);
  const says = getComputedStyle(link, '::after').content;
  if (!at || !says.includes(at) || plain(says) !== at) {
    faults.push(link.outerHTML.slice(0, 120) + ' says ' + says + ', and its target is ' + at);
  }
}
for (const link of document.querySelectorAll('main a[href^="http"], main a[href^="mailto:"]')) {
  if (!getComputedStyle(link, '::after').content.includes(link.getAttribute('href'))) {
    faults.push(link.outerHTML.slice(0, 120));
  }
}
return faults;
