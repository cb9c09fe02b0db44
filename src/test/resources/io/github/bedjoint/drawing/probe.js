// Looks at the page as it is laid out and writes what it finds into the page around it: a line each, name, tab, value.
(function () {
  document.querySelectorAll('details').forEach(function (d) { d.open = OPEN; });
  var lines = [];
  function say(name, value) { lines.push(name + '\t' + String(value).replace(/\s+/g, ' ')); }
  function what(e) { return e.tagName + '.' + (e.getAttribute('class') || '') + ' "' + e.textContent.slice(0, 40) + '"'; }
  var wide = document.documentElement.clientWidth;
  say('width', wide);
  say('scrollWidth', document.documentElement.scrollWidth);
  document.querySelectorAll('body *').forEach(function (e) {
    var box = e.getBoundingClientRect();
    if (!e.closest('.scroll') && !e.closest('svg') && box.width > 0 && (box.right > wide + 1 || box.left < -1)) { say('outside', what(e) + ' ' + box.right); }
  });
  document.querySelectorAll('.scroll').forEach(function (e) {
    if (e.scrollWidth > e.clientWidth + 1) { say('scrolls', e.getAttribute('aria-label')); }
  });
  var smallest = 1e9, smallestDrawn = 1e9;
  var walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (var node = walker.nextNode(); node; node = walker.nextNode()) {
    var parent = node.parentElement;
    if (!node.data.trim() || parent.closest('svg, script, pre')) { continue; }
    if (parent.getClientRects().length) { smallest = Math.min(smallest, parseFloat(getComputedStyle(parent).fontSize)); }
  }
  say('smallestText', smallest);
  var drawings = document.querySelectorAll('svg'), texts = 0;
  drawings.forEach(function (svg) {
    var frame = svg.getBoundingClientRect();
    var scale = frame.width / svg.viewBox.baseVal.width;
    var title = svg.querySelector('title').textContent;
    var boxes = [];
    svg.querySelectorAll('text').forEach(function (t) {
      texts += 1;
      smallestDrawn = Math.min(smallestDrawn, parseFloat(t.getAttribute('font-size')) * scale);
      var b = t.getBoundingClientRect();
      if (b.left < frame.left - 1 || b.right > frame.right + 1 || b.top < frame.top - 2 || b.bottom > frame.bottom + 2) {
        say('cutOff', title + ': "' + t.textContent + '"');
      }
      boxes.forEach(function (o) {
        // Boxes hold the room above and below letters: a fifth of the height may overlap.
        var x = Math.min(b.right, o.b.right) - Math.max(b.left, o.b.left), y = Math.min(b.bottom, o.b.bottom) - Math.max(b.top, o.b.top);
        if (x > 1.5 && y > 0.3 * Math.min(b.height, o.b.height)) { say('overlap', title + ': "' + t.textContent + '" and "' + o.t + '"'); }
      });
      boxes.push({b: b, t: t.textContent});
    });
  });
  say('drawings', drawings.length);
  say('drawnTexts', texts);
  say('smallestDrawnText', smallestDrawn);
  var pre = document.createElement('pre');
  pre.id = 'NAME';
  pre.textContent = lines.join('\n');
  window.parent.document.body.appendChild(pre);
})();
