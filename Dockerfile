# Not run in CI: it follows the commands that CI does run (npm ci, scripts/build.mjs, node dist/apps/…).
FROM node:22-slim AS build
WORKDIR /app
COPY package.json package-lock.json .npmrc ./
RUN npm ci
COPY . .
RUN node scripts/build.mjs && npm prune --omit=dev

FROM node:22-slim
WORKDIR /app
ENV NODE_ENV=production DATA_FOLDER=/data HOST=0.0.0.0 PORT=4180
RUN mkdir /data && chown node:node /data
COPY --from=build /app /app
USER node
VOLUME /data
EXPOSE 4180
CMD ["node", "--enable-source-maps", "dist/apps/api/main.js"]
