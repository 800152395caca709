// Follows each link of a selection and says which of them does not show its target.
const faults = [];
const links = document.querySelectorAll(arguments[0]);
if (links.length === 0) faults.push('no link is ' + arguments[0]);
for (const link of links) {
  link.click();
  const target = document.querySelector(':target');
  if (!target || target.id !== decodeURIComponent(link.hash.slice(1))) {
    faults.push(link.innerText + ' leads to ' + (target ? target.id : 'nowhere'));
    continue;
  }
  const top = target.getBoundingClientRect().top, root = document.documentElement;
  const atEnd = Math.ceil(root.scrollTop + root.clientHeight) >= root.scrollHeight - 1;
  if (top < -1 || top > (atEnd ? root.clientHeight : 100)) faults.push(link.innerText + ': its target is ' + Math.round(top) + ' px down');
}
return faults.slice(0, 30);
