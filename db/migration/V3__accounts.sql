-- People who may sign in. E-mail addresses are kept in lower case.
create table person (
    id varchar(36) primary key,
    email varchar(254) not null,
    name varchar(120) not null,
    role varchar(16) not null,
    state varchar(16) not null,
    password_hash varchar(200),
    about varchar(500),
    version integer not null,
    created_at timestamp with time zone not null,
    signed_in_at timestamp with time zone,
    constraint person_email unique (email),
    constraint person_role check (role in ('MEMBER', 'MAINTAINER', 'STEWARD')),
    constraint person_state check (state in ('PENDING', 'ACTIVE', 'CLOSED'))
);
create index person_standing on person (state, role);

-- Links that work once. Only the SHA-256 of their secret is kept.
create table one_time_link (
    id varchar(36) primary key,
    secret_hash varchar(64) not null,
    purpose varchar(16) not null,
    role varchar(16),
    person_id varchar(36) references person (id),
    note varchar(200) not null,
    created_by varchar(120) not null,
    created_at timestamp with time zone not null,
    expires_at timestamp with time zone not null,
    used_at timestamp with time zone,
    constraint one_time_link_secret unique (secret_hash),
    constraint one_time_link_purpose check (purpose in ('SET_UP', 'INVITATION', 'RESET')),
    constraint one_time_link_role check (role in ('MEMBER', 'MAINTAINER', 'STEWARD'))
);
create index one_time_link_open on one_time_link (purpose, expires_at);

-- Attempts to sign in that were not followed by success, by account and by network; every instance counts here.
create table sign_in_attempt (
    counted varchar(120) primary key,
    attempts integer not null,
    last_at timestamp with time zone not null,
    blocked_until timestamp with time zone not null
);
create index sign_in_attempt_age on sign_in_attempt (last_at);

-- What a steward chose for this instance. The set-up is open until the first steward has been made.
create table instance_setting (
    name varchar(40) primary key,
    text varchar(1000) not null
);
insert into instance_setting (name, text) values ('set-up', 'open');

-- As Spring Session JDBC 4.1 expects them.
create table spring_session (
    primary_id char(36) not null,
    session_id char(36) not null,
    creation_time bigint not null,
    last_access_time bigint not null,
    max_inactive_interval int not null,
    expiry_time bigint not null,
    principal_name varchar(100),
    constraint spring_session_pk primary key (primary_id)
);
create unique index spring_session_ix1 on spring_session (session_id);
create index spring_session_ix2 on spring_session (expiry_time);
create index spring_session_ix3 on spring_session (principal_name);

create table spring_session_attributes (
    session_primary_id char(36) not null,
    attribute_name varchar(200) not null,
    attribute_bytes bytea not null,
    constraint spring_session_attributes_pk primary key (session_primary_id, attribute_name),
    constraint spring_session_attributes_fk foreign key (session_primary_id) references spring_session (primary_id) on delete cascade
);
