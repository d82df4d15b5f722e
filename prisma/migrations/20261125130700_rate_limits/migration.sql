-- Tries to sign in and to open links, counted over all api processes.
GRANT USAGE ON SCHEMA public TO cotyla_api;
GRANT SELECT, INSERT, UPDATE, DELETE ON rate_limits TO cotyla_api;
