import { Controller, Get, HttpCode, Param, Post, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { actionRequest, isActionName, type ActionRequest } from '#libs/contracts/actions/all';
import { page } from '#libs/contracts/common';
import type { SavedMarks } from '#libs/contracts/screens/marks';
import type { OrderScreen, Uploaded } from '#libs/contracts/screens/order';
import { audit } from '#libs/platform/audit/audit';
import { act } from '#libs/steps/act';
import { exportRecord } from '#libs/steps/frozen/export-record';
import { packedPixels } from '#libs/steps/imaging/packed-pixels';
import { storeImage } from '#libs/steps/imaging/store-image';
import { sendOwnerLink } from '#libs/steps/messages/send-owner-link';
import { resolveMessage } from '#libs/steps/messages/resolve-message';
import { retryProblem } from '#libs/steps/messages/retry-problem';
import { listOrders, ordersAsCsv } from '#libs/steps/order-screen/list-orders';
import { readOrderScreen, screenAfter } from '#libs/steps/order-screen/read-order-screen';
import { savedMarks } from '#libs/steps/quality/saved-marks';
import type { Actor } from '#libs/steps/record/actor';
import { notFound } from '#libs/steps/record/step-error';
import { printDocument } from '#libs/steps/report/print-document';
import { readDocument } from '#libs/steps/report/read-document';
import { Deps } from '../deps.js';
import { imageType, privately, sendCsv, sendPixels, sendStored } from '../http/send-file.js';
import { oneFile } from '../http/upload.js';
import { Asked, Id, Input, Sha } from '../http/zod-body.js';
import { By } from '../session/guard.js';

const listAsked = z.object({ show: z.enum(['open', 'waiting', 'all']).default('open'), q: z.string().max(100).default(''), page });
const messageCame = z.object({ arrived: z.boolean() });

@Controller('api/orders')
export class OrdersController {
  constructor(private readonly deps: Deps) {}

  @Get()
  list(@By() by: Actor, @Asked(listAsked) asked: z.output<typeof listAsked>) {
    return listOrders(this.deps, by, asked);
  }

  @Get('export.csv')
  async csv(@By() by: Actor, @Asked(listAsked) asked: z.output<typeof listAsked>, @Res() reply: FastifyReply) {
    return sendCsv(reply, 'orders.csv', await ordersAsCsv(this.deps, by, asked));
  }

  @Get(':order')
  read(@By() by: Actor, @Id('order') order: string): Promise<OrderScreen> {
    return readOrderScreen(this.deps, by, order);
  }

  @Get(':order/record.zip')
  async record(@By() by: Actor, @Id('order') order: string, @Res() reply: FastifyReply) {
    const zip = await exportRecord(this.deps, by, order);
    return privately(reply, 'application/zip').header('content-disposition', 'attachment; filename="record.zip"').header('cache-control', 'no-store').send(zip);
  }

  @Post(':order/actions/:action') @HttpCode(200)
  act(@By() by: Actor, @Id('order') order: string, @Param('action') action: string, @Input(actionRequest) request: ActionRequest): Promise<OrderScreen> {
    if (!isActionName(action)) throw notFound();
    return act(this.deps, by, order, action, request, screenAfter);
  }

  @Post(':order/images') @HttpCode(201)
  upload(@By() by: Actor, @Id('order') order: string, @Req() request: FastifyRequest): Promise<Uploaded> {
    return oneFile(request, (file) => storeImage(this.deps, by, order, file));
  }

  @Get(':order/images/:sha/preview')
  async preview(@By() by: Actor, @Id('order') order: string, @Sha('sha') sha: string, @Res() reply: FastifyReply) {
    const image = await this.#image(by, order, sha);
    if (!image.previewSha) throw notFound();
    return sendStored(reply, this.deps.files, image.previewSha, 'image/jpeg');
  }

  @Get(':order/images/:sha/pixels')
  async pixels(@By() by: Actor, @Id('order') order: string, @Sha('sha') sha: string, @Res() reply: FastifyReply) {
    return sendPixels(reply, await packedPixels(this.deps.files, await this.#image(by, order, sha, 'viewImage')));
  }

  @Get(':order/images/:sha/file')
  async file(@By() by: Actor, @Id('order') order: string, @Sha('sha') sha: string, @Res() reply: FastifyReply) {
    const image = await this.#image(by, order, sha, 'viewImage');
    return sendStored(reply, this.deps.files, image.sha256, imageType(image.kind));
  }

  @Get(':order/exposures/:exposure/marks')
  marks(@By() by: Actor, @Id('order') order: string, @Id('exposure') exposure: string): Promise<SavedMarks> {
    return savedMarks(this.deps, by, order, exposure);
  }

  @Get(':order/documents/:document')
  async document(@By() by: Actor, @Id('order') order: string, @Id('document') id: string, @Res() reply: FastifyReply) {
    const paper = await this.deps.db.practice(by.practice, (tx) => readDocument(tx, { id: by.id, role: by.roles[0] ?? 'none', practice: by.practice }, order, id));
    if (paper.pdfSha) return sendStored(reply, this.deps.files, paper.pdfSha, 'application/pdf', `${paper.name}.pdf`);
    return privately(reply, 'application/pdf', `${paper.name}.pdf`).send(await printDocument(paper.kind, paper.snapshot));
  }

  @Post(':order/owner-link') @HttpCode(200)
  async ownerLink(@By() by: Actor, @Id('order') order: string) {
    await sendOwnerLink(this.deps, by, order);
    return readOrderScreen(this.deps, by, order);
  }

  @Post(':order/problems/:problem/retry') @HttpCode(200)
  async retry(@By() by: Actor, @Id('order') order: string, @Id('problem') problem: string) {
    await retryProblem(this.deps, by, order, problem);
    return readOrderScreen(this.deps, by, order);
  }

  @Post(':order/messages/:message/resolve') @HttpCode(200)
  async resolve(@By() by: Actor, @Id('order') order: string, @Id('message') message: string, @Input(messageCame) input: z.output<typeof messageCame>) {
    await resolveMessage(this.deps, by, order, message, input.arrived);
    return readOrderScreen(this.deps, by, order);
  }

  async #image(by: Actor, order: string, sha: string, looked?: 'viewImage') {
    const image = await this.deps.db.practice(by.practice, async (tx) => {
      const row = await tx.image.findUnique({ where: { orderId_sha256: { orderId: order, sha256: sha } } });
      if (row && looked) await audit(tx, { by: by.id, role: by.roles[0] ?? 'none', action: looked, practice: by.practice, order, subject: sha });
      return row;
    });
    if (!image) throw notFound();
    return image;
  }
}
