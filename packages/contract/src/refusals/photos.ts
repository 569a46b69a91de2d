export const PHOTO_REFUSALS = {
  'photo/not-a-picture': { status: 422, title: 'That is no picture that can be kept' },
  'photo/damaged': { status: 422, title: 'That picture cannot be read to its end' },
  'photo/moves': { status: 422, title: 'That picture moves' },
  'photo/too-large': { status: 413, title: 'That picture is too large' },
  'photo/too-many-pixels': { status: 422, title: 'That picture has too many pixels' },
  'photo/no-such-note': { status: 422, title: 'It names a note that is not there' },
  'photo/not-a-portrait': { status: 409, title: 'That photo is no tray portrait' },
  'photo/withdrawn': { status: 410, title: 'That photo was taken down' },
  'photo/file-missing': { status: 404, title: 'The picture of that photo is missing' },
  'photo/no-room': { status: 507, title: 'There is no room for more photos' },
} as const;
