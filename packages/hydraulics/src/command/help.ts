export const HELP = `headfall: gravity-fed watering for small flocks, from a plan to a verdict

  headfall check PLAN        heads, flows and verdict of every drinker
  headfall measure PLAN      which measurements to take again, and how good they must be
  headfall birds PLAN        what the birds drink, now and each coming week; drinkers they need
  headfall weeks PLAN        the same each coming week, as birds grow and hung lines go up
  headfall year PLAN         a year: who is where, what they drink, and the kit given out to the pens
  headfall yard PLAN         founts, pans and buckets: litres, slopes, refills, whom they suit
  headfall day PLAN          a simulated day of the birds at their drinkers, or many
  headfall lasts PLAN        how long the water lasts, and what is carried
  headfall away PLAN         what must stand there for some days away, and what one failure does
  headfall mark PLAN         how far the level should fall by tomorrow
  headfall rain PLAN         whether a roof and a barrel will do, by a record of rain
  headfall frost PLAN        a night of frost: hours until each part stops, what to drain, refills
  headfall heat PLAN         a hot day: water temperature by the hour, what to flush, what shade changes
  headfall mishaps PLAN      what any one mishap does, the worst first, and what guards against it
  headfall trouble PLAN      what is likely wrong, from what you see
  headfall sizes PLAN        each pipe size on the shelf in place of the pipe
  headfall cure PLAN         the smallest changes that make it work, and what they cost
  headfall build PLAN        parts, cuts, holes, heights, order, tests, loads: how to build it
  headfall compare PLAN PLAN ...   what two or more plans come to, side by side
  headfall batch FILE        the same of each of many plans, a line of JSON each
  headfall help

PLAN is a plan file; - reads standard input.

  --json           the result as a document (see docs/reference/check-result.md)
  --units us       write US units (metric if left out; what the plan typed is kept)
  --samples 200    check, measure, compare: plans tried within the doubts of the measurements (more where these
                   do not decide, if left out); 0 for none
  --seed 1         check, measure: seed of those samples; day: seed of the (first) day
  --day 2026-07-04 the day the birds' ages are counted on, if the plan names none; today if left out
  --weeks 8        birds, weeks, yard, cure, build: how many to look ahead; year: 52
  --days 5         away: how many days nobody comes; day: how many days to simulate (1 if left out)
  --jobs 2         day, batch: on so many workers; the answer is the same
  --ask check      batch: what is asked, with the options of that command; FILE has one plan a line
  --resume OUT     batch: goes on with the file OUT where it was left
  --figure size    day: birds want the figure to size on (expect if left out); rain: expect for that to expect
  --all            mishaps: all of them, each with its guards (the worst 12 if left out)
  --low "-8 degC"  frost: the night's lowest, with --hours 12 and --wind "3 m/s"; the plan's own if left out
  --high "36 degC" heat: the day's highest, with --sun "900 W/m2"; the plan's own if left out
  --weather hot    day: a day of the plan's hot spell
  --source NAME    mark: which source (the first if left out)
  --level "60 cm"  mark: where its water stands (full if left out)
  --record FILE    rain, frost: a station file of GHCN-Daily, or a table of dates and rain, or lowest temperatures
  --degrees C      frost: unit of a record that does not say; also F, "tenths of C"
  --example seattle  rain, frost: a record of open data instead; or newyork
  --rain-units mm  rain: unit of a table that does not say; also cm, in, "tenths of mm"
  --run NAME       sizes: exchange the pipe of this run only (all if left out)
  --by money       cure: what counts first; also parts or stand (money where the plan has prices, else parts)
  --stand-most 1.5m  cure: the highest stand to think of; --stand-step 5cm between heights
  --margin 5cm     cure: head that every drinker must have to spare
  --front margin   cure: what more head to spare costs; height: what a higher stand saves in pipe
  --apply 1        cure: write the plan with that cure into the file named by --out
  --most 1600      cure: plans that may be judged before the search ends
  --dry LIST       trouble: drinkers that give nothing when worked, "hen line 3-8, hen line 12"; also
                   --weak, --fine; --drips and --holds with nobody at them
  --level falls-overnight  trouble: also holds-overnight, does-not-fall, falls-less, falls-as-marked,
                   falls-faster, found-empty, low, as-thought; of several sources "barrel: low"
  --wet LIST       trouble: wet ground along a run, under a drinker, at a source; --not-wet where it is dry
  --jug "hen line 3: 250 mL in 4 min"  trouble: jug and watch at a worked drinker
  --end "feed: little"  trouble: from the run's far end, opened; also nothing, plenty
  --lid "barrel: helps"  trouble: with its lid off; also no-change
  --after-filling LIST  trouble: drinkers looked at after water was poured into an empty source again
  --stands "60 cm" trouble: where the water stands now (the plan's ordinary level if left out)
  --seen "2 days"  trouble: how long ago there was water in it (a day if left out)
  --kerf "2 mm"    build: width that a cut takes
  --paper a4       build: two sheets to print, as a page for a browser; also letter
  --csv            build: the parts, as a table; year: a row for each week and pen
  --from 2026-04-01  year: the day it begins (the plan's day if left out); --ics for a calendar file
  --no-colour      no colour

Exit status: 0 all good, 1 something starves, drips, is dry or too few, 2 the plan cannot be read.
`;
