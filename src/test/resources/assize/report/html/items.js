// Lists all items with what can be chosen by, as it can be read beside each.
return [...document.querySelectorAll('#items .item, #items .apart li')].map(item => {
  const apart = item.localName === 'li';
  const states = new Set([...item.querySelectorAll('.aspects .state')].map(s => s.textContent.trim()));
  const rank = ['disputed', 'settled against dissent', 'the rule set names no source'];
  return [
    item.id,
    apart ? 'not applicable' : item.querySelector('.ruling .verdict').textContent.trim(),
    item.closest('.area').querySelector('h3').textContent.trim(),
    apart ? '' : (rank.find(r => states.has(r)) || 'agreed').replace('the rule set names ', ''),
    item.querySelector('.hazard') ? 'with a hazard' : '',
    item.textContent,
  ].join('\n');
});
