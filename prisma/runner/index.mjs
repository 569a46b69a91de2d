// Migrations and roles. Plain JavaScript, so that it runs before anything is built.
export { GROUP_ROLES, bootstrapRoles, databaseGrants, rolesSql } from './roles.mjs';
export { MIGRATIONS_FOLDER, readMigrations } from './read-migrations.mjs';
export { migrate, readPending } from './migrate.mjs';
