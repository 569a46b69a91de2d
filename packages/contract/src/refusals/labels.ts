export const LABEL_REFUSALS = {
  'label/mistyped': { status: 422, title: 'That is not what stands on any label' },
  'label/not-a-payload': { status: 422, title: 'Codes are digits and capitals' },
  'label/not-a-number': { status: 422, title: 'That is not a number of labels' },
  'label/none-left': { status: 409, title: 'So many codes could not be drawn' },
} as const;
