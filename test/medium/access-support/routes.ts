import { RequestMethod } from '@nestjs/common';
import { METHOD_METADATA, PATH_METADATA } from '@nestjs/common/constants.js';
import { ModulesContainer } from '@nestjs/core';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';

export type Route = `${'GET' | 'POST'} /${string}`;

/** Every route that the api answers, read off its controllers: a new one is here without being told. */
export function routesOf(api: NestFastifyApplication): Route[] {
  const controllers = [...api.get(ModulesContainer).values()].flatMap((module) => [...module.controllers.values()]).map((wrapper) => wrapper.metatype as { prototype: object });
  return controllers.flatMap((controller) => {
    const base = String(Reflect.getMetadata(PATH_METADATA, controller));
    return Object.getOwnPropertyNames(controller.prototype).flatMap((name) => {
      const handler: unknown = Reflect.get(controller.prototype, name);
      const method = typeof handler === 'function' ? (Reflect.getMetadata(METHOD_METADATA, handler) as RequestMethod | undefined) : undefined;
      if (method === undefined) return [];
      const path = String(Reflect.getMetadata(PATH_METADATA, handler as object));
      return [`${RequestMethod[method]} /${[base, path].filter((p) => p !== '/').join('/')}` as Route];
    });
  });
}
