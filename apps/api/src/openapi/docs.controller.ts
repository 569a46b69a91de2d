import { Controller, Get, Header, Inject } from '@nestjs/common';
import { SETTINGS } from '../config/settings.token.ts';
import type { Settings } from '../config/settings.ts';
import { Open } from '../http/rule.ts';
import type { Described } from './docs/described.ts';
import { docsPage, STYLE_HASH } from './docs/docs-page.ts';
import { ServedDocument } from './served-document.ts';

/** As strict as the rest of the API: nothing is loaded, and the one style sheet stands in the page. */
const POLICY = `default-src 'none'; style-src '${STYLE_HASH}'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'`;

@Controller('docs')
export class DocsController {
  #page: string | undefined;

  constructor(
    private readonly served: ServedDocument,
    @Inject(SETTINGS) private readonly settings: Settings,
  ) {}

  /** This description as a page to read and print. */
  @Get()
  @Open()
  @Header('content-type', 'text/html; charset=utf-8')
  @Header('content-security-policy', POLICY)
  page(): string {
    this.#page ??= docsPage(this.served.whole as unknown as Described, this.settings.baseUrl.replace(/\/$/, ''));
    return this.#page;
  }
}
