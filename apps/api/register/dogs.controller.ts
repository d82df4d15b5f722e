import { Controller, Get, HttpCode, Post, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import { z } from 'zod';
import { addIdentifier as identifier, addPersonRole as personRole, newDog, newPerson, renameDog as rename, type NewDog } from '#libs/contracts/register';
import { listBreeds } from '#libs/register/breeds/list-breeds';
import { addIdentifier } from '#libs/register/dogs/add-identifier';
import { addPersonRole } from '#libs/register/dogs/add-person-role';
import { createDog } from '#libs/register/dogs/create-dog';
import { dogsAsCsv, listDogs } from '#libs/register/dogs/list-dogs';
import { readDog } from '#libs/register/dogs/read-dog';
import { renameDog } from '#libs/register/dogs/rename-dog';
import { amendPerson } from '#libs/register/people/amend-person';
import { createPerson } from '#libs/register/people/create-person';
import { listPeople, peopleAsCsv } from '#libs/register/people/list-people';
import { search } from '#libs/register/search/search';
import { restateDog } from '#libs/steps/order/restate-dog';
import type { Actor } from '#libs/steps/record/actor';
import { Deps } from '../deps.js';
import { sendCsv } from '../http/send-file.js';
import { Asked, Id, Input } from '../http/zod-body.js';
import { By } from '../session/guard.js';

const listAsked = z.object({ q: z.string().max(100).optional(), page: z.coerce.number().int().min(1).max(10_000).optional() });
type ListAsked = z.output<typeof listAsked>;

@Controller('api')
export class DogsController {
  constructor(private readonly deps: Deps) {}

  @Get('search')
  search(@By() by: Actor, @Asked(listAsked) asked: ListAsked) {
    return search(this.deps, by, asked);
  }

  @Get('breeds')
  breeds(@By() by: Actor) {
    return listBreeds(this.deps, by);
  }

  @Get('dogs')
  list(@By() by: Actor, @Asked(listAsked) asked: ListAsked) {
    return listDogs(this.deps, by, asked);
  }

  @Get('dogs.csv')
  async csv(@By() by: Actor, @Asked(listAsked) asked: ListAsked, @Res() reply: FastifyReply) {
    return sendCsv(reply, 'dogs.csv', await dogsAsCsv(this.deps, by, asked));
  }

  @Get('dogs/:dog')
  read(@By() by: Actor, @Id('dog') dog: string) {
    return readDog(this.deps, by, dog);
  }

  @Post('dogs') @HttpCode(201)
  create(@By() by: Actor, @Input(newDog) input: NewDog) {
    return createDog(this.deps, by, input);
  }

  @Post('dogs/:dog/names') @HttpCode(200)
  rename(@By() by: Actor, @Id('dog') dog: string, @Input(rename) input: z.output<typeof rename>) {
    return renameDog(this.deps, by, dog, input);
  }

  @Post('dogs/:dog/identifiers') @HttpCode(200)
  identify(@By() by: Actor, @Id('dog') dog: string, @Input(identifier) input: z.output<typeof identifier>) {
    return addIdentifier(this.deps, by, dog, input, restateDog(this.deps, by));
  }

  @Post('dogs/:dog/people') @HttpCode(200)
  addPerson(@By() by: Actor, @Id('dog') dog: string, @Input(personRole) input: z.output<typeof personRole>) {
    return addPersonRole(this.deps, by, dog, input);
  }

  @Get('people')
  people(@By() by: Actor, @Asked(listAsked) asked: ListAsked) {
    return listPeople(this.deps, by, asked);
  }

  @Get('people.csv')
  async peopleCsv(@By() by: Actor, @Asked(listAsked) asked: ListAsked, @Res() reply: FastifyReply) {
    return sendCsv(reply, 'people.csv', await peopleAsCsv(this.deps, by, asked));
  }

  @Post('people') @HttpCode(201)
  createPerson(@By() by: Actor, @Input(newPerson) input: z.output<typeof newPerson>) {
    return createPerson(this.deps, by, input);
  }

  @Post('people/:person') @HttpCode(200)
  amendPerson(@By() by: Actor, @Id('person') person: string, @Input(newPerson) input: z.output<typeof newPerson>) {
    return amendPerson(this.deps, by, person, input);
  }
}
