-- AlterTable
ALTER TABLE "image" ADD COLUMN     "said" JSONB NOT NULL DEFAULT '{}';
