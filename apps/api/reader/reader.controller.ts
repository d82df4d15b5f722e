import { Controller, Get, HttpCode, Post, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import type { z } from 'zod';
import { paged, type Paged } from '#libs/contracts/common';
import { readerReject, readerResult, type PackageScreen, type ReaderResult } from '#libs/contracts/screens/reader';
import { packedPixels } from '#libs/steps/imaging/packed-pixels';
import { acknowledgePackage, rejectPackage, resultOfPackage } from '#libs/steps/reader-page/answer-package';
import { listPackages, lookAtPackage, packagesAsCsv, packageScreen } from '#libs/steps/reader-page/packages';
import { blindCopy } from '#libs/steps/reader-page/blind-copy';
import { sizeOfZip, zipFor } from '#libs/steps/reader-page/zip-package';
import { notFound } from '#libs/steps/record/step-error';
import { Deps } from '../deps.js';
import { imageType, privately, sendCsv, sendPixels, sendStored } from '../http/send-file.js';
import { Asked, Id, Input, Sha } from '../http/zod-body.js';
import { For, Who } from '../session/guard.js';
import type { Principal } from '../session/principal.js';
import { readerOf } from './reader-of.js';

@Controller('api/reader/packages') @For('reader', 'readerLink')
export class ReaderController {
  constructor(private readonly deps: Deps) {}

  @Get()
  list(@Who() who: Principal, @Asked(paged) { page }: Paged) {
    return listPackages(this.deps, readerOf(who), page);
  }

  @Get('export.csv')
  async csv(@Who() who: Principal, @Res() reply: FastifyReply) {
    return sendCsv(reply, 'packages.csv', await packagesAsCsv(this.deps, readerOf(who)));
  }

  @Get(':package')
  read(@Who() who: Principal, @Id('package') id: string): Promise<PackageScreen> {
    return packageScreen(this.deps, readerOf(who), id);
  }

  @Get(':package/zip')
  async zip(@Who() who: Principal, @Id('package') id: string, @Res() reply: FastifyReply) {
    const p = await lookAtPackage(this.deps, readerOf(who), id, 'downloadPackage');
    return privately(reply, 'application/zip').header('content-disposition', `attachment; filename="${p.summary.number}.zip"`).header('x-about-bytes', sizeOfZip(p)).send(await zipFor(this.deps.files, p));
  }

  @Get(':package/images/:sha/preview')
  async preview(@Who() who: Principal, @Id('package') id: string, @Sha('sha') sha: string, @Res() reply: FastifyReply) {
    const film = await this.#film(who, id, sha);
    if (!film.previewSha) throw notFound();
    return sendStored(reply, this.deps.files, film.previewSha, 'image/jpeg');
  }

  @Get(':package/images/:sha/pixels')
  async pixels(@Who() who: Principal, @Id('package') id: string, @Sha('sha') sha: string, @Res() reply: FastifyReply) {
    const { image, kind, previewSha } = await this.#film(who, id, sha);
    return sendPixels(reply, await packedPixels(this.deps.files, { sha256: image, kind, previewSha }));
  }

  @Get(':package/images/:sha/file')
  async file(@Who() who: Principal, @Id('package') id: string, @Sha('sha') sha: string, @Res() reply: FastifyReply) {
    const { p, place } = await this.#place(who, id, sha);
    const { kind, content } = await blindCopy(this.deps.files, p, place);
    return privately(reply, imageType(kind)).send(content);
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

  async #place(who: Principal, id: string, sha: string) {
    const p = await lookAtPackage(this.deps, readerOf(who), id, 'viewFilm');
    const place = p.summary.films.findIndex((f) => f.image === sha);
    if (place < 0) throw notFound();
    return { p, place };
  }

  async #film(who: Principal, id: string, sha: string) {
    const { p, place } = await this.#place(who, id, sha);
    return p.summary.films[place]!;
  }
}
