import { Controller, Get, HttpCode, Post, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import { z } from 'zod';
import { readerReject, readerResult, type PackageScreen, type ReaderResult } from '#libs/contracts/screens/reader';
import { acknowledgePackage, rejectPackage, resultOfPackage } from '#libs/steps/reader-page/answer-package';
import { listPackages, lookAtPackage, packageScreen } from '#libs/steps/reader-page/packages';
import type { Reader } from '#libs/steps/reader-page/reader';
import { zipPackage } from '#libs/steps/reader-page/zip-package';
import { notFound, StepError } from '#libs/steps/record/step-error';
import { Deps } from '../deps.js';
import { imageType, privately, sendStored } from '../http/send-file.js';
import { Asked, Id, Input, Sha } from '../http/zod-body.js';
import { For, Who } from '../session/guard.js';
import type { Principal } from '../session/principal.js';

const paged = z.object({ page: z.coerce.number().int().min(1).max(10_000).default(1) });

function readerOf(who: Principal): Reader {
  if (!who.centre) throw new StepError('NOT_YOUR_ROLE');
  return { id: who.staff ?? 'link', name: who.staff ? who.name : (who.home ?? 'a reader'), centre: who.centre, centreName: who.home ?? '', onlyPackage: who.kind === 'readerLink' ? who.package : null };
}

@Controller('api/reader/packages') @For('reader', 'readerLink')
export class ReaderController {
  constructor(private readonly deps: Deps) {}

  @Get()
  list(@Who() who: Principal, @Asked(paged) { page }: { page: number }) {
    return listPackages(this.deps, readerOf(who), page);
  }

  @Get(':package')
  read(@Who() who: Principal, @Id('package') id: string): Promise<PackageScreen> {
    return packageScreen(this.deps, readerOf(who), id);
  }

  @Get(':package/zip')
  async zip(@Who() who: Principal, @Id('package') id: string, @Res() reply: FastifyReply) {
    const p = await lookAtPackage(this.deps, readerOf(who), id, 'downloadPackage');
    return privately(reply, 'application/zip').header('content-disposition', `attachment; filename="${p.summary.number}.zip"`).send(zipPackage(this.deps.files, p));
  }

  @Get(':package/images/:sha/preview')
  async preview(@Who() who: Principal, @Id('package') id: string, @Sha('sha') sha: string, @Res() reply: FastifyReply) {
    const film = await this.#film(who, id, sha);
    if (!film.previewSha) throw notFound();
    return sendStored(reply, this.deps.files, film.previewSha, 'image/jpeg');
  }

  @Get(':package/images/:sha/file')
  async file(@Who() who: Principal, @Id('package') id: string, @Sha('sha') sha: string, @Res() reply: FastifyReply) {
    const film = await this.#film(who, id, sha);
    return sendStored(reply, this.deps.files, film.image, imageType(film.kind));
  }

  @Post(':package/acknowledge') @HttpCode(200)
  async acknowledge(@Who() who: Principal, @Id('package') id: string): Promise<PackageScreen> {
    await acknowledgePackage(this.deps, readerOf(who), id);
    return packageScreen(this.deps, readerOf(who), id);
  }

  @Post(':package/reject') @HttpCode(200)
  async reject(@Who() who: Principal, @Id('package') id: string, @Input(readerReject) input: z.output<typeof readerReject>): Promise<PackageScreen> {
    await rejectPackage(this.deps, readerOf(who), id, input);
    return packageScreen(this.deps, readerOf(who), id);
  }

  @Post(':package/result') @HttpCode(200)
  async result(@Who() who: Principal, @Id('package') id: string, @Input(readerResult) input: ReaderResult): Promise<PackageScreen> {
    await resultOfPackage(this.deps, readerOf(who), id, input);
    return packageScreen(this.deps, readerOf(who), id);
  }

  async #film(who: Principal, id: string, sha: string) {
    const p = await lookAtPackage(this.deps, readerOf(who), id, 'viewFilm');
    const film = p.summary.films.find((f) => f.image === sha);
    if (!film) throw notFound();
    return film;
  }
}
