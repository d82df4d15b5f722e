import { Controller, Get, Header, Headers, Param, Query, UseGuards } from '@nestjs/common';
import type { Bundle, CapabilityStatement, Resource } from '@medplum/fhirtypes';
import { historyBundle } from '#libs/fhir/bundle';
import { capabilityStatement, withHistory } from '#libs/fhir/capability-statement';
import { fhirTypes, type FhirType } from '#libs/fhir/resources';
import { askedOf } from '#libs/steps/fhir/asked';
import { fhirBase, readVersions } from '#libs/steps/fhir/read-resource';
import type { Reader } from '#libs/steps/fhir/reader';
import { search } from '#libs/steps/fhir/search';
import { badInput, notFound, StepError } from '#libs/steps/record/step-error';
import { Deps } from '../deps.js';
import { For } from '../session/guard.js';
import { FHIR_JSON } from './fhir-json.js';
import { ByKey, KeyGuard } from './key-guard.js';

type Queried = Record<string, string | string[] | undefined>;
type Answered = Promise<Resource>;

/** FHIR R4, to be read: what a practice's other programs are told. */
@Controller('fhir')
@For('anybody')
export class FhirController {
  constructor(private readonly deps: Deps) {}

  @Get('metadata') @Header('content-type', FHIR_JSON)
  metadata(@Query() query: Queried): CapabilityStatement {
    jsonOnly(query);
    return capabilityStatement(fhirBase(this.deps), this.deps.clock.now().toISOString());
  }

  @Get(':type') @UseGuards(KeyGuard) @Header('content-type', FHIR_JSON)
  search(@ByKey() reader: Reader, @Param('type') type: string, @Query() query: Queried, @Headers('prefer') prefer?: string): Promise<Bundle> {
    jsonOnly(query);
    const asked = askedOf(known(type), query);
    if (asked.ignored.length > 0 && /handling\s*=\s*strict/i.test(prefer ?? '')) throw badInput(asked.ignored[0]!, `${type} is not searched by ${asked.ignored.join(', ')}. See /fhir/metadata for what it is searched by.`);
    return search(this.deps, reader, asked);
  }

  @Get(':type/:id') @UseGuards(KeyGuard) @Header('content-type', FHIR_JSON)
  async read(@ByKey() reader: Reader, @Param('type') type: string, @Param('id') id: string, @Query() query: Queried): Answered {
    jsonOnly(query);
    return (await readVersions(this.deps, reader, known(type), id)).at(-1)!;
  }

  @Get(':type/:id/_history') @UseGuards(KeyGuard) @Header('content-type', FHIR_JSON)
  async history(@ByKey() reader: Reader, @Param('type') type: string, @Param('id') id: string, @Query() query: Queried): Promise<Bundle> {
    jsonOnly(query);
    return historyBundle(await readVersions(this.deps, reader, versioned(type), id), `${fhirBase(this.deps)}/${type}/${id}/_history`, fhirBase(this.deps));
  }

  @Get(':type/:id/_history/:version') @UseGuards(KeyGuard) @Header('content-type', FHIR_JSON)
  async version(@ByKey() reader: Reader, @Param('type') type: string, @Param('id') id: string, @Param('version') version: string, @Query() query: Queried): Answered {
    jsonOnly(query);
    const found = (await readVersions(this.deps, reader, versioned(type), id)).find(({ meta }) => meta?.versionId === version);
    if (!found) throw notFound();
    return found;
  }

}

function known(type: string): FhirType {
  const found = fhirTypes.find((one) => one === type);
  if (!found) throw new StepError('NOT_FOUND', `There is no ${type.slice(0, 40)} here. What there is: ${fhirTypes.join(', ')}.`);
  return found;
}

function versioned(type: string): FhirType {
  const found = known(type);
  if (!withHistory.includes(found)) throw new StepError('NOT_FOUND', `Only ${withHistory.join(' and ')} have a history here.`);
  return found;
}

function jsonOnly({ _format: format }: Queried): void {
  if (format !== undefined && !/^(application\/(fhir\+)?)?json/.test([format].flat()[0] ?? '')) throw badInput('_format', 'Resources come as JSON only: leave _format out, or write _format=json.');
}
