-- With which account at an OpenID provider somebody may sign in: its issuer and subject, which never change.
create table provider_identity (
    id varchar(36) primary key,
    person_id varchar(36) not null references person (id),
    issuer varchar(500) not null,
    subject varchar(255) not null,
    provider varchar(80) not null,
    linked_at timestamp with time zone not null,
    last_used_at timestamp with time zone,
    constraint provider_identity_of_one unique (issuer, subject),
    constraint provider_identity_one_each unique (person_id, issuer)
);

-- For the steward's view of the log.
create index audit_entry_event on audit_entry (event, id);
