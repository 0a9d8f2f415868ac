"use strict";
// Sorts the index by the column whose heading is pressed. Without this script
// the index stands in the order of the records.
(function () {
  var table = document.querySelector("table.index");
  if (!table) { return; }
  var body = table.tBodies[0], heads = [].slice.call(table.tHead.rows[0].cells), rows = [].slice.call(body.rows);
  var key = function (row, i) { return row.cells[i].getAttribute("data-key") || row.cells[i].textContent; };
  heads.forEach(function (head, i) {
    var button = document.createElement("button");
    button.type = "button";
    button.textContent = head.textContent;
    head.textContent = "";
    head.appendChild(button);
    button.addEventListener("click", function () {
      var down = head.getAttribute("aria-sort") === "ascending";
      heads.forEach(function (other) { other.removeAttribute("aria-sort"); });
      head.setAttribute("aria-sort", down ? "descending" : "ascending");
      rows.sort(function (a, b) {
        var x = key(a, i), y = key(b, i);
        var order = isNaN(x) || isNaN(y) ? x.localeCompare(y) : x - y;
        return down ? -order : order;
      });
      rows.forEach(function (row) { body.appendChild(row); });
    });
  });
})();
