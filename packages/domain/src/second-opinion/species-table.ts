import type { SpeciesRow } from './species-row.ts';

const NPN = 'Luna T, propagation protocols, Native Plant Network';
const MANUALS = 'Dirr MA, Heuser CW 1987; Hartmann HT, Kester DE, Davies FT, Geneve RL 2002; from memory';
const GIROUARD = 'Girouard RM 1974, N. Z. J. For. Sci. 4:140-149';
const CLONES = 'Mitchell AK 1997, Northwest Sci. 71:56-63';

/** Strength for talc and quick dip, in ppm; lengths in cm; shares and days as published. What a source does not tell is left out. */
export const SPECIES_TABLE: readonly SpeciesRow[] = [
  { name: 'Juniperus osteosperma', isSlow: true, lengthCm: [10, 20], ppm: [8_000, 8_000], medium: ['perlite', 'peat'], rooting: [0.69, 0.69], source: 'Cope KL, Rupp LA 2013, Native Plants J. 14:76' },
  { name: 'Juniperus communis', isSlow: true, lengthCm: [10, 20], ppm: [3_000, 8_000], medium: ['sand', 'peat', 'perlite'], firstRootsDays: 42, source: `${NPN} (juniperus-66); Wilkins TC, Duckworth JC 2011, Breaking new ground for juniper, p. 30` },
  { name: 'Juniperus horizontalis', isSlow: true, lengthCm: [10, 20], ppm: [8_000, 8_000], source: `${NPN} (juniperus-67)` },
  { name: 'Juniperus virginiana', isSlow: true, lengthCm: [10, 20], ppm: [5_000, 20_000], rooting: [0, 0.6], firstRootsDays: 90, source: MANUALS },
  { name: 'Thuja occidentalis', isSlow: false, lengthCm: [10, 20], ppm: [3_000, 8_000], rooting: [0.7, 1], firstRootsDays: 42, source: MANUALS },
  { name: 'Thuja plicata', isSlow: false, lengthCm: [10, 20], ppm: [3_000, 8_000], rooting: [0.5, 0.95], source: MANUALS },
  { name: 'Callitropsis nootkatensis', isSlow: true, ppm: [3_000, 5_000], source: 'Russell JH et al. 1990, FRDA Rep. 148; strength from memory' },
  { name: 'Taxus brevifolia', isSlow: true, lengthCm: [12, 25], ppm: [8_000, 8_000], medium: ['perlite', 'sand'], rooting: [0.36, 0.36], source: `${NPN} (taxus-229); ${CLONES}` },
  { name: 'Taxus', isSlow: true, lengthCm: [12, 25], ppm: [5_000, 10_000], rooting: [0.7, 0.95], firstRootsDays: 60, source: `${MANUALS}; of garden forms` },
  { name: 'Pseudotsuga menziesii', isSlow: true, ppm: [3_000, 5_000], rooting: [0.24, 0.74], source: 'Copes DL 1983, Can. J. For. Res. 13; Copes DL 1992, Can. J. For. Res. 22:1888-1894; strength from memory' },
  { name: 'Picea sitchensis', isSlow: true, lengthCm: [5, 8], ppm: [0, 3_000], medium: ['peat', 'sand'], rooting: [0.38, 0.55], source: `${GIROUARD}; a trial of donors of 8 to 11 years` },
  { name: 'Picea', isSlow: true, lengthCm: [5, 8], ppm: [0, 3_000], medium: ['peat', 'sand'], source: GIROUARD },
  { name: 'Pinus muricata', isSlow: true, rooting: [0.88, 0.88], source: 'Millar CI 1987, New Forests 3:231-238; of seedling hedges' },
  { name: 'Pinus patula', isSlow: true, rooting: [0.67, 0.81], firstRootsDays: 140, source: 'donors of 7 to 13 months' },
  { name: 'Pinus monticola', isSlow: true, rooting: [0.75, 1], source: 'Andrews DS 1980, USDA Forest Service Research Note; seedlings of up to two years' },
  { name: 'Pinus edulis', isSlow: true, rooting: [0, 0.1], source: 'a judgement: no routine from grown trees is published' },
  { name: 'Pinus monophylla', isSlow: true, rooting: [0, 0.1], source: 'a judgement: no routine from grown trees is published' },
  { name: 'Abies', isSlow: true, ppm: [3_000, 8_000], rooting: [0.1, 0.8], firstRootsDays: 90, source: MANUALS },
  { name: 'Tsuga', isSlow: true, ppm: [3_000, 8_000], rooting: [0.1, 0.8], firstRootsDays: 90, source: MANUALS },
  { name: 'Cupressus', isSlow: true, ppm: [3_000, 8_000], rooting: [0.3, 0.9], source: MANUALS },
  { name: 'Hesperocyparis', isSlow: true, ppm: [3_000, 8_000], rooting: [0.3, 0.9], source: MANUALS },
  { name: 'Arctostaphylos', isSlow: false, ppm: [8_000, 8_000], source: MANUALS },
  { name: 'Ceanothus', isSlow: false, ppm: [1_000, 1_000], source: MANUALS },
];
