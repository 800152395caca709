// What a reader of the paper has to find on it: each text that stands in the page, folded away or not.
const folded = [...document.querySelectorAll('details:not([open])')];
folded.forEach(one => one.open = true);
const said = new Set();
const walker = document.createTreeWalker(document.querySelector('.page'), NodeFilter.SHOW_TEXT);
while (walker.nextNode()) {
  const parent = walker.currentNode.parentElement;
  const silent = parent.closest('title, desc, .spoken, summary, .aspects thead, .close, .back, .skip, form, .shown, .drawing, [hidden], .working > .key');
  if (!silent && parent.checkVisibility() && walker.currentNode.data.trim()) {
    said.add(walker.currentNode.data.trim());
  }
}
folded.forEach(one => one.open = false);
return [...said];
