import { describe, expect, test } from 'vitest';
import { codeSaid } from './code-said.ts';

const OURS = ['https://plants.example.org', 'http://192.168.1.20:3000'];

describe('what a code says', () => {
  test.each([
    ['https://plants.example.org/l/K58Y9J69', 'K58Y9J69'],
    ['HTTPS://PLANTS.EXAMPLE.ORG/L/K58Y9J69', 'K58Y9J69'],
    ['http://192.168.1.20:3000/l/K58Y9J69', 'K58Y9J69'],
    ['http://plants.example.org/l/T-14/', 'T-14'],
    ['https://plants.example.org/l/T%2014', 'T 14'],
    ['https://plants.example.org/l/T14?from=paper', 'T14'],
    [' T-14\n', 'T-14'],
    // As people type a code of a roll.
    ['k58y 9j69', 'K58Y9J69'],
    ['https://plants.example.org/l/k58y-9j69', 'K58Y9J69'],
    ['Bench 3.2', 'Bench 3.2'],
    ['Wacholder-Ü7', 'Wacholder-Ü7'],
  ])('%s is the label %s', (read, code) => {
    expect(codeSaid(read, OURS)).toEqual({ is: 'label', code });
  });

  test.each([
    ['https://plants.example.org/programmes/harrowdale/batches?label=T14', '/programmes/harrowdale/batches?label=T14'],
    ['https://plants.example.org/l/T14/more', '/l/T14/more'],
    ['https://plants.example.org', '/'],
  ])('%s is a page of ours', (read, path) => {
    expect(codeSaid(read, OURS)).toEqual({ is: 'page', path });
  });

  test.each([
    ['https://plants.example.org.evil.example/l/T14', 'plants.example.org.evil.example'],
    ['https://other.example/l/T14', 'other.example'],
    // Another port is another install.
    ['http://192.168.1.20:3001/l/T14', '192.168.1.20:3001'],
    ['https://plants.example.org@other.example/l/T14', 'other.example'],
  ])('%s leads elsewhere', (read, host) => {
    expect(codeSaid(read, OURS)).toEqual({ is: 'elsewhere', host });
  });

  test.each(['K58Y9J68', 'k58y 9j96', 'https://plants.example.org/l/K58Y9J6J'])('%s has a wrong character', (read) => {
    expect(codeSaid(read, OURS).is).toBe('mistyped');
  });

  test.each(['', '  ', 'x'.repeat(41), 'WIFI:S:Bothy;T:WPA;P:secret;;', 'javascript:alert(1)', '<b>T14</b>', 'https://', 'https://plants.example.org/l/%E0%A4%A', 'T14\nT15', '../../etc', 'https://plants.example.org//other.example/l/T14', 'https://plants.example.org/\\\\other.example'])('%j is no label', (read) => {
    expect(codeSaid(read, OURS).is).toBe('nothing');
  });
});
