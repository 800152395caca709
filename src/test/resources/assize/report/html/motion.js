// What moves by itself or glides.
return [...document.querySelectorAll('*')].filter(el => {
  const style = getComputedStyle(el);
  return style.animationName !== 'none' || style.transitionDuration.split(', ').some(t => parseFloat(t) > 0) || style.scrollBehavior === 'smooth';
}).map(el => el.localName + '.' + el.className).slice(0, 20);
