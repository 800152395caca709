/* Finds what could run, load or send something, as the browser has made out the page. */
const faults = [];
const odd = 'iframe, frame, object, embed, applet, base, link, audio, video, source, math, template';
for (const one of document.querySelectorAll('*')) {
  const name = one.localName;
  for (const attribute of one.attributes) {
    const value = attribute.value.trim();
    const leads = ['href', 'src', 'action', 'formaction', 'xlink:href'].includes(attribute.name);
    const away = leads && !value.startsWith('#') && !value.startsWith('data:image/')
      && !(name === 'a' && /^(https?:|mailto:)/.test(value) && one.rel.includes('noreferrer'))
      && !(name === 'a' && /^[A-Za-z0-9-]+\.html$/.test(value));
    if (attribute.name.startsWith('on') || attribute.name === 'srcdoc' || away) {
      faults.push(`<${name} ${attribute.name}="${value.slice(0, 60)}">`);
    }
  }
  if (one.matches(odd)) {
    faults.push(`<${name}>`);
  }
}
if (document.scripts.length > 1 || document.querySelectorAll('style').length !== 1) {
  faults.push('scripts or styles that are not its own');
}
const ids = [...document.querySelectorAll('[id]')].map(one => one.id);
faults.push(...ids.filter((id, at) => ids.indexOf(id) !== at).map(id => `id ${id} twice`));
return faults;
