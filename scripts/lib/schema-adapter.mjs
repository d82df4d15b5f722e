import crypto from 'node:crypto';
import { PrismaPg } from '@prisma/adapter-pg';
import { ColumnTypeEnum } from '@prisma/driver-adapter-utils';
import pg from 'pg';

const CHAR = 18; // PostgreSQL's one-byte "char", used throughout its catalogue
const TEXT = 25;

/**
 * The schema engine's way to PostgreSQL. Version 7.10 of the adapter splits a
 * script at every semicolon, cannot read "char", and opens its shadow database
 * on the real one when given an address; the three are set right here.
 */
export function schemaAdapter(url, pools) {
  const { hostname, port, username, password, pathname } = new URL(url);
  const login = {
    host: hostname,
    port: Number(port || 5432),
    user: decodeURIComponent(username),
    password: decodeURIComponent(password),
    max: 1,
    allowExitOnIdle: true,
  };
  const database = decodeURIComponent(pathname.slice(1));

  function factory(name, afterwards) {
    const made = new PrismaPg({ ...login, database: name });
    const connect = made.connect.bind(made);
    made.connect = async () => repaired(await connect(), pools, afterwards);
    made.connectToShadowDb = async () => {
      const shadow = `shadow_${crypto.randomUUID()}`;
      await administer(`CREATE DATABASE "${shadow}"`);
      return factory(shadow, () => administer(`DROP DATABASE IF EXISTS "${shadow}" WITH (FORCE)`)).connect();
    };
    return made;
  }

  async function administer(sql) {
    const client = new pg.Client({ ...login, database });
    await client.connect();
    try {
      await client.query(sql);
    } finally {
      await client.end();
    }
  }

  return factory(database);
}

function repaired(adapter, pools, afterwards) {
  pools.push(adapter.underlyingDriver());
  adapter.executeScript = async (sql) => {
    try {
      await adapter.underlyingDriver().query(sql); // one simple query is one transaction
    } catch (error) {
      adapter.onError(error);
    }
  };
  readCharColumns(adapter);
  if (afterwards) {
    const dispose = adapter.dispose.bind(adapter);
    adapter.dispose = async () => {
      await dispose();
      await afterwards();
    };
  }
  return adapter;
}

function readCharColumns(adapter) {
  const performIO = adapter.performIO.bind(adapter);
  const queryRaw = adapter.queryRaw.bind(adapter);
  let isChar = [];
  adapter.performIO = async (query) => {
    const result = await performIO(query);
    isChar = (result.fields ?? []).map((field) => field.dataTypeID === CHAR);
    result.fields?.forEach((field, i) => {
      if (isChar[i]) field.dataTypeID = TEXT;
    });
    return result;
  };
  adapter.queryRaw = async (query) => {
    const result = await queryRaw(query);
    isChar.forEach((is, i) => {
      if (is) result.columnTypes[i] = ColumnTypeEnum.Character;
    });
    return result;
  };
}
