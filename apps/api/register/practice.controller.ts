import { Controller, Get, HttpCode, Post } from '@nestjs/common';
import type { z } from 'zod';
import { newChannel, type Channels } from '#libs/contracts/dispatch';
import { detectorSize } from '#libs/contracts/film-size';
import { newAccreditation, newCentre, newEquipment, newReader, newRoom, newStaff, newText, prices, type PracticeScreen } from '#libs/contracts/register';
import { addAccreditation } from '#libs/register/practice/add-accreditation';
import { addCentre } from '#libs/register/practice/add-centre';
import { readChannels, setChannel } from '#libs/register/practice/centre-channels';
import { addEquipment } from '#libs/register/practice/add-equipment';
import { addReader } from '#libs/register/practice/add-reader';
import { addRoom } from '#libs/register/practice/add-room';
import { addStaff } from '#libs/register/practice/add-staff';
import { addText } from '#libs/register/practice/add-text';
import { equipmentChecked, markEquipmentChecked } from '#libs/register/practice/mark-equipment-checked';
import { practiceScreen } from '#libs/register/practice/practice-screen';
import { stateDetectorSize } from '#libs/register/practice/state-detector-size';
import { setPrices } from '#libs/register/practice/set-prices';
import { askTrial } from '#libs/steps/dispatch/ask-trial';
import { inviteReader } from '#libs/steps/messages/invite-reader';
import type { Actor } from '#libs/steps/record/actor';
import { Deps } from '../deps.js';
import { Id, Input } from '../http/zod-body.js';
import { By } from '../session/guard.js';

@Controller('api/practice')
export class PracticeController {
  constructor(private readonly deps: Deps) {}

  @Get()
  read(@By() by: Actor): Promise<PracticeScreen> {
    return practiceScreen(this.deps, by);
  }

  @Post('staff') @HttpCode(200)
  staff(@By() by: Actor, @Input(newStaff) input: z.output<typeof newStaff>): Promise<PracticeScreen> {
    return addStaff(this.deps, by, input);
  }

  @Post('rooms') @HttpCode(200)
  rooms(@By() by: Actor, @Input(newRoom) input: z.output<typeof newRoom>): Promise<PracticeScreen> {
    return addRoom(this.deps, by, input);
  }

  @Post('equipment') @HttpCode(200)
  equipment(@By() by: Actor, @Input(newEquipment) input: z.output<typeof newEquipment>): Promise<PracticeScreen> {
    return addEquipment(this.deps, by, input);
  }

  @Post('equipment/:device/checked') @HttpCode(200)
  checked(@By() by: Actor, @Id('device') device: string, @Input(equipmentChecked) input: z.output<typeof equipmentChecked>): Promise<PracticeScreen> {
    return markEquipmentChecked(this.deps, by, device, input);
  }

  @Post('equipment/:device/pixels') @HttpCode(200)
  pixels(@By() by: Actor, @Id('device') device: string, @Input(detectorSize) input: z.output<typeof detectorSize>): Promise<PracticeScreen> {
    return stateDetectorSize(this.deps, by, device, input);
  }

  @Post('accreditations') @HttpCode(200)
  accreditations(@By() by: Actor, @Input(newAccreditation) input: z.output<typeof newAccreditation>): Promise<PracticeScreen> {
    return addAccreditation(this.deps, by, input);
  }

  @Post('texts') @HttpCode(200)
  texts(@By() by: Actor, @Input(newText) input: z.output<typeof newText>): Promise<PracticeScreen> {
    return addText(this.deps, by, input);
  }

  @Post('prices') @HttpCode(200)
  prices(@By() by: Actor, @Input(prices) input: z.output<typeof prices>): Promise<PracticeScreen> {
    return setPrices(this.deps, by, input);
  }

  @Post('centres') @HttpCode(200)
  centres(@By() by: Actor, @Input(newCentre) input: z.output<typeof newCentre>): Promise<PracticeScreen> {
    return addCentre(this.deps, by, input);
  }

  @Get('channels')
  channels(@By() by: Actor): Promise<Channels> {
    return readChannels(this.deps, by);
  }

  @Post('centres/:centre/channel') @HttpCode(200)
  channel(@By() by: Actor, @Id('centre') centre: string, @Input(newChannel) input: z.output<typeof newChannel>): Promise<Channels> {
    return setChannel(this.deps, by, centre, input);
  }

  @Post('centres/:centre/channel/try') @HttpCode(200)
  tryChannel(@By() by: Actor, @Id('centre') centre: string): Promise<Channels> {
    return askTrial(this.deps, by, centre);
  }

  @Post('centres/:centre/readers') @HttpCode(200)
  readers(@By() by: Actor, @Id('centre') centre: string, @Input(newReader) input: z.output<typeof newReader>): Promise<PracticeScreen> {
    return addReader(this.deps, by, centre, input, inviteReader(by));
  }
}
