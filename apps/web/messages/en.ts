/** All words of the web app in English: one file a noun, one line here. */
import account from './en/account.json' with { type: 'json' };
import act from './en/act.json' with { type: 'json' };
import batches from './en/batches.json' with { type: 'json' };
import bench from './en/bench.json' with { type: 'json' };
import climate from './en/climate.json' with { type: 'json' };
import comparison from './en/comparison.json' with { type: 'json' };
import dashboards from './en/dashboards.json' with { type: 'json' };
import donorTrees from './en/donor-trees.json' with { type: 'json' };
import due from './en/due.json' with { type: 'json' };
import entries from './en/entries.json' with { type: 'json' };
import exactPlace from './en/exact-place.json' with { type: 'json' };
import field from './en/field.json' with { type: 'json' };
import holds from './en/holds.json' with { type: 'json' };
import home from './en/home.json' with { type: 'json' };
import imports from './en/imports.json' with { type: 'json' };
import incidents from './en/incidents.json' with { type: 'json' };
import labels from './en/labels.json' with { type: 'json' };
import news from './en/news.json' with { type: 'json' };
import origins from './en/origins.json' with { type: 'json' };
import outing from './en/outing.json' with { type: 'json' };
import keys from './en/keys.json' with { type: 'json' };
import ours from './en/ours.json' with { type: 'json' };
import outbox from './en/outbox.json' with { type: 'json' };
import partners from './en/partners.json' with { type: 'json' };
import people from './en/people.json' with { type: 'json' };
import permissions from './en/permissions.json' with { type: 'json' };
import phones from './en/phones.json' with { type: 'json' };
import photos from './en/photos.json' with { type: 'json' };
import places from './en/places.json' with { type: 'json' };
import plans from './en/plans.json' with { type: 'json' };
import programmes from './en/programmes.json' with { type: 'json' };
import readings from './en/readings.json' with { type: 'json' };
import recipes from './en/recipes.json' with { type: 'json' };
import refusals from './en/refusals.json' with { type: 'json' };
import regimes from './en/regimes.json' with { type: 'json' };
import reports from './en/reports.json' with { type: 'json' };
import requests from './en/requests.json' with { type: 'json' };
import review from './en/review.json' with { type: 'json' };
import round from './en/round.json' with { type: 'json' };
import scan from './en/scan.json' with { type: 'json' };
import secondOpinion from './en/second-opinion.json' with { type: 'json' };
import shell from './en/shell.json' with { type: 'json' };
import sites from './en/sites.json' with { type: 'json' };
import sorting from './en/sorting.json' with { type: 'json' };
import stands from './en/stands.json' with { type: 'json' };
import sticking from './en/sticking.json' with { type: 'json' };
import taxa from './en/taxa.json' with { type: 'json' };
import forecast from './en/forecast.json' with { type: 'json' };
import lostLabel from './en/lost-label.json' with { type: 'json' };
import leaveOrCall from './en/leave-or-call.json' with { type: 'json' };
import timeToRoot from './en/time-to-root.json' with { type: 'json' };
import trace from './en/trace.json' with { type: 'json' };
import trayCards from './en/tray-cards.json' with { type: 'json' };
import treatments from './en/treatments.json' with { type: 'json' };
import trips from './en/trips.json' with { type: 'json' };
import ui from './en/ui.json' with { type: 'json' };
import whoLogs from './en/who-logs.json' with { type: 'json' };
import words from './en/words.json' with { type: 'json' };
import workLists from './en/work-lists.json' with { type: 'json' };
import workdays from './en/workdays.json' with { type: 'json' };

/** All words of the web app in English: one file a noun, one line here. */
export const messages = {
  account,
  act,
  batches,
  bench,
  climate,
  comparison,
  dashboards,
  donorTrees,
  due,
  entries,
  exactPlace,
  field,
  holds,
  home,
  imports,
  incidents,
  news,
  origins,
  outing,
  keys,
  labels,
  ours,
  outbox,
  partners,
  people,
  permissions,
  phones,
  photos,
  places,
  plans,
  programmes,
  readings,
  recipes,
  refusals,
  regimes,
  reports,
  requests,
  review,
  round,
  scan,
  secondOpinion,
  shell,
  sites,
  sorting,
  stands,
  sticking,
  taxa,
  forecast, leaveOrCall, lostLabel, timeToRoot, trace,
  trayCards,
  treatments,
  trips,
  ui,
  whoLogs,
  words,
  workdays,
  workLists,
};
