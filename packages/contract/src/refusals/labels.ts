export const LABEL_REFUSALS = {
  'label/unknown': { status: 404, title: 'No such label' },
  'label/too-many': { status: 422, title: 'Too many labels at once' },
  'label/choose-first': { status: 422, title: 'Say which labels' },
  'label/mistyped': { status: 422, title: 'That is not what stands on any label' },
  'label/not-a-payload': { status: 422, title: 'Codes are digits and capitals' },
  'label/not-a-number': { status: 422, title: 'That is not a number of labels' },
  'label/none-left': { status: 409, title: 'Those codes could not be drawn' },
} as const;
