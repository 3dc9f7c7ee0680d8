"""How a sheet looks, on a phone, on a desk and on paper."""

from __future__ import annotations

STYLE = """
:root { --ink: #17211d; --soft: #45524c; --rule: #6f7d76; --tint: #eef3f0; --strong: #14513c; }
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body { margin: 0; background: #fff; color: var(--ink); overflow-wrap: anywhere;
  font: 100%/1.4 system-ui, "Segoe UI", Roboto, "DejaVu Sans", sans-serif; }
main { max-width: 46em; margin: 0 auto; padding: 1em; }
h1, h2, h3, p, ul, dl, dd { margin: 0; padding: 0; }
ul { list-style: none; }
h1 { font-size: 1.6em; line-height: 1.2; }
h2 { font-size: 1.2em; line-height: 1.25; }
h3 { font-size: 1.08em; line-height: 1.3; }
.who { color: var(--soft); margin: .1em 0 .6em; }
.note { border-left: .2em solid var(--strong); padding-left: .6em; margin: .5em 0; }
.leave-out { border: .14em solid var(--ink); padding: .5em .7em; margin: .8em 0; }
.weeks { margin: 1em 0; }
.week { margin: 0 0 1em; break-inside: avoid; }
.week h2 { font-size: 1em; }
.week li { display: flex; gap: .6em; padding: .15em 0; }
.week li span + span { flex: 1; min-width: 0; }
.on { flex: none; width: 6.2em; color: var(--soft); }
a { color: var(--strong); }
.terms div { margin: .3em 0; }
.terms dt { font-weight: 700; }
.session { border-top: .2em solid var(--strong); padding-top: 1em; margin-top: 2em; }
.line { border-top: 1px solid var(--rule); padding: .55em 0; break-inside: avoid; }
.turn { border-left: .3em solid var(--strong); padding-left: .6em; margin: .5em 0; background: var(--tint); }
.pairing { font-weight: 700; padding: .3em 0; }
.mark { display: inline-block; min-width: 1.6em; color: var(--strong); }
.load { font-weight: 700; }
.whole { white-space: nowrap; }
.plates, .remark { color: var(--soft); }
.remark span { display: block; }
.boxes { display: flex; flex-wrap: wrap; gap: .35em .9em; margin-top: .4em; align-items: stretch; }
.day { min-width: 6.5em; font-weight: 700; align-self: center; }
.pain .day { min-width: 13em; }
.set { display: flex; align-items: center; gap: .25em; color: var(--soft); }
.box { width: 4.4em; height: 2.6em; border: 1px solid var(--rule); background: #fff; color: var(--soft);
  font-size: .75em; line-height: 1; text-align: right; padding: .15em .2em; }
.spare .box { border-style: dashed; }
.how { border-top: 1px solid var(--rule); padding: .4em 0 2em; }
.stop { font-weight: 700; }
.caution { font-size: .85em; color: var(--soft); margin-top: .8em; }
.back { margin-top: .8em; }
@media (max-width: 30em) { .day { flex-basis: 100%; } }
@page { margin: 11mm; }
@media print {
  html { font-size: 10pt; }
  body { font-size: 10pt; line-height: 1.3; }
  main { max-width: none; padding: 0; }
  a { color: inherit; text-decoration: none; }
  .week { margin-bottom: .6em; }
  .week li { padding: 0; }
  .weeks { columns: 2; }
  .session { break-before: page; border: 0; margin: 0; padding: 0; font-size: calc(10pt * var(--size)); }
  .line { padding: .3em 0; }
  .how { padding-bottom: 1em; }
  .caution { margin-top: .3em; }
  .remark span { display: inline; }
  .back { display: none; }
}
"""
