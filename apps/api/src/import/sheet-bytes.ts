import { SHEET_BYTES } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';

export type SheetEncoding = 'utf-8' | 'utf-16le' | 'windows-1252';

/**
 * The text of a sheet, and in which letters it was written.
 *
 * UTF-8 is tried first, strictly. What is not UTF-8 but text reads as
 * Windows-1252, as older spreadsheets write it; that is said, so that a person
 * sees whether names look right.
 *
 * @throws DomainError `import/empty`, `import/too-large`, `import/not-text`, `import/encoding-unclear`
 */
export function textOfSheet(bytes: Buffer, told?: SheetEncoding): { text: string; encoding: SheetEncoding } {
  if (bytes.length === 0) throw new DomainError('import/empty', 'the file holds nothing: save the sheet as CSV and choose it again');
  if (bytes.length > SHEET_BYTES) throw new DomainError('import/too-large', 'at most 50 MB: bring a season at a time', { bytes: bytes.length });

  const encoding = told ?? encodingOf(bytes);
  const text = decode(bytes, encoding);
  if (text.trim() === '') throw new DomainError('import/empty', 'the file holds only blanks: save the sheet as CSV and choose it again');
  return { text, encoding };
}

function encodingOf(bytes: Buffer): SheetEncoding {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (looksBinary(bytes)) {
    throw new DomainError('import/not-text', 'this looks like a workbook, a picture or a program: open it in your spreadsheet and save the sheet as CSV');
  }
  return reads(bytes, 'utf-8') ? 'utf-8' : 'windows-1252';
}

/** Text has no null bytes and hardly any control characters. */
function looksBinary(bytes: Buffer): boolean {
  const start = bytes.subarray(0, 64 * 1024);
  if (start.includes(0)) return true;
  const controls = start.filter((byte) => byte < 32 && byte !== 9 && byte !== 10 && byte !== 13).length;
  return controls > start.length / 100;
}

function reads(bytes: Buffer, encoding: string): boolean {
  try {
    new TextDecoder(encoding, { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

function decode(bytes: Buffer, encoding: SheetEncoding): string {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    throw new DomainError('import/encoding-unclear', `the file does not read as ${encoding}: save it as CSV UTF-8 and choose it again`);
  }
}
