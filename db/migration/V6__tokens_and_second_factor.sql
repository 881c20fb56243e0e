-- Tokens with which programs sign in. Only the SHA-256 of each is kept; a revoked one is gone.
create table access_token (
    id varchar(36) primary key,
    person_id varchar(36) not null references person (id),
    name varchar(60) not null,
    secret_hash varchar(64) not null,
    scopes varchar(40) not null,
    created_at timestamp with time zone not null,
    expires_at timestamp with time zone not null,
    last_used_at timestamp with time zone,
    constraint access_token_secret unique (secret_hash),
    constraint access_token_name unique (person_id, name)
);

-- Secrets of one-time codes at sign-in; on_since is null until the first code proved that the person has it.
create table second_factor (
    person_id varchar(36) primary key references person (id),
    secret varchar(200) not null,
    last_step bigint not null,
    on_since timestamp with time zone
);

-- Hashes of the codes that help who lost the other ones; a used one is gone.
create table recovery_code (
    person_id varchar(36) not null references person (id),
    code_hash varchar(64) not null,
    constraint recovery_code_pk primary key (person_id, code_hash)
);
