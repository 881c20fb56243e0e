-- Two people.
insert into person (id, email, name, role, state, password_hash, about, version, created_at, signed_in_at) values
('20c99d1c-c44f-45cf-b622-703e97d81855', 'steward@club.example', 'Steward of the fixture', 'STEWARD', 'ACTIVE', '$argon2id$v=19$m=19456,t=2,p=1$UcPWMpBbZkNcZK6REUEi6g$AnJ/G5TM2iVzukLn7jRwIkw+GvBujKMgdtMdWzLJznQ', NULL, 1, TIMESTAMP WITH TIME ZONE '2026-11-29 02:40:07.123456+00', TIMESTAMP WITH TIME ZONE '2026-11-29 02:40:07.123456+00'),
('7d0c2a41-53c7-4f0e-9d3a-0f6d4d0f2b11', 'member@club.example', 'Member of the fixture', 'MEMBER', 'ACTIVE', NULL, 'Builds ribs; “quotes” and \ backslashes', 3, TIMESTAMP WITH TIME ZONE '2026-11-29 02:40:07.123456+00', NULL);

