(function () {
  'use strict';
  var form = document.getElementById('pick');
  var words = document.getElementById('pick-words');
  var said = document.getElementById('pick-said');
  var items = document.querySelectorAll('#items .item, #items .apart li');
  var texts = [];
  if (!window.CSS || !CSS.supports('selector(:has(*))')) {
    return;
  }

  function plain(text) {
    return text.normalize('NFD').replace(/[\u0300-\u036f]/g, '').toLowerCase();
  }

  function text(index) {
    if (texts[index] === undefined) {
      texts[index] = plain(items[index].textContent);
    }
    return texts[index];
  }

  function narrow(asked) {
    var wanted = plain(asked).split(/\s+/).filter(Boolean);
    form.classList.toggle('worded', wanted.length > 0);
    items.forEach(function (item, index) {
      var like = wanted.every(function (word) {
        return text(index).indexOf(word) >= 0;
      });
      if (item.classList.contains('unlike') === like) {
        item.classList.toggle('unlike', !like);
      }
    });
  }

  function say() {
    var shown = 0;
    items.forEach(function (item) {
      shown += item.offsetParent === null ? 0 : 1;
    });
    said.textContent = shown + ' of ' + items.length + ' items shown';
  }

  form.addEventListener('input', function (event) {
    if (event.target === words) {
      narrow(words.value);
    }
    say();
  });
  form.addEventListener('reset', function () {
    narrow('');
    said.textContent = 'All ' + items.length + ' items shown';
  });
  form.addEventListener('submit', function (event) {
    event.preventDefault();
  });
  window.addEventListener('pageshow', function () {
    narrow(words.value);
  });
  document.getElementById('pick-by-words').hidden = false;
})();
