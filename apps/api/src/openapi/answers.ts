import { RequestMethod } from '@nestjs/common';
import { HEADERS_METADATA, HTTP_CODE_METADATA, INTERCEPTORS_METADATA } from '@nestjs/common/constants.js';
import { CLASS_SERIALIZER_OPTIONS } from '@nestjs/common/serializer/class-serializer.constants.js';
import type { z } from 'zod';
import { TagInterceptor } from '../http/etag.ts';

/** How a route answers when all is well. */
export interface Answers {
  readonly status: number;
  readonly media: string;
  readonly schema: z.ZodType | undefined;
  /** With an ETag. */
  readonly tagged: boolean;
}

export function answersOf(handler: object, method: RequestMethod): Answers {
  const about = <T>(key: string): T | undefined => Reflect.getMetadata(key, handler) as T | undefined;
  const headers = about<Array<{ name: string; value: string }>>(HEADERS_METADATA) ?? [];
  return {
    status: about<number>(HTTP_CODE_METADATA) ?? (method === RequestMethod.POST ? 201 : 200),
    media: headers.find(({ name }) => name === 'content-type')?.value ?? 'application/json',
    schema: about<{ schema?: z.ZodType }>(CLASS_SERIALIZER_OPTIONS)?.schema,
    tagged: about<unknown[]>(INTERCEPTORS_METADATA)?.includes(TagInterceptor) ?? false,
  };
}
