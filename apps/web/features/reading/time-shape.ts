import type { IncidentOnAxis, TimeAxis } from '@sprigline/contract';
import { scaleLinear, scaleUtc } from 'd3-scale';
import { area, type SeriesPoint, stack } from 'd3-shape';

/** From the ground up: what is nearest to the wild stands lowest and darkest. */
export const LAYERS = ['planted', 'potted', 'liner', 'cutting'] as const;
export type Layer = (typeof LAYERS)[number];

type Point = TimeAxis['points'][number];

/** Per cent of the width and of the height, with nothing at the foot. */
export interface TimeShape {
  readonly layers: readonly { readonly layer: Layer; readonly path: string }[];
  readonly days: readonly { readonly at: number; readonly year: number; readonly month: number }[];
  readonly heights: readonly { readonly at: number; readonly plants: number }[];
  readonly looks: readonly { readonly at: number; readonly height: number; readonly day: string; readonly batches: number }[];
  readonly incidents: readonly { readonly entryId: string; readonly from: number; readonly width: number; readonly severity: IncidentOnAxis['severity'] }[];
}

/** Narrower ones could not be seen, and are as wide as this. */
const NARROWEST = 0.6;
/** More dates would run into each other on a phone. */
const MOST_DAYS = 5;

const timeOf = (day: string): Date => new Date(`${day}T00:00:00Z`);

/** Plants at each stage stacked over time, with what happened. @param points two or more, in order */
export function timeShape({ points, incidents }: Pick<TimeAxis, 'points' | 'incidents'>): TimeShape {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return { layers: [], days: [], heights: [], looks: [], incidents: [] };
  const x = scaleUtc([timeOf(first.day), timeOf(last.day)], [0, 100]);
  const most = Math.max(1, ...points.map((point) => LAYERS.reduce((sum, layer) => sum + point[layer], 0)));
  const y = scaleLinear([0, most], [100, 0]).nice(4);
  const mostLooks = Math.max(1, ...points.map(({ looked }) => looked));
  const shape = area<SeriesPoint<Point>>().x(({ data }) => x(timeOf(data.day))).y0((point) => y(point[0])).y1((point) => y(point[1]));
  return {
    layers: stack<Point, Layer>().keys(LAYERS)([...points]).map((series) => ({ layer: series.key, path: shape(series) ?? '' })),
    days: thinned(x.ticks(MOST_DAYS)).map((day) => ({ at: x(day), year: day.getUTCFullYear(), month: day.getUTCMonth() })),
    heights: y.ticks(4).filter(Number.isInteger).map((plants) => ({ at: y(plants), plants })),
    looks: points.filter(({ looked }) => looked > 0).map(({ day, looked }) => ({ at: x(timeOf(day)), height: (looked / mostLooks) * 100, day, batches: looked })),
    incidents: incidents.flatMap((incident) => {
      const [from, until] = [Math.max(0, x(timeOf(incident.from))), Math.min(100, x(timeOf(incident.until ?? last.day)))];
      if (until < 0 || from > 100) return [];
      const width = Math.max(NARROWEST, until - from);
      return [{ entryId: incident.entryId, severity: incident.severity, from: Math.min(from, 100 - width), width }];
    }),
  };
}

const thinned = (days: readonly Date[]): Date[] => days.filter((_, at) => at % Math.ceil(days.length / MOST_DAYS) === 0);
