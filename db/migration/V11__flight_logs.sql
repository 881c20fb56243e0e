-- Recorded logs of a draft. V9 says why the checks have no list.
create table flight_log (
    id varchar(36) primary key,
    draft_id varchar(36) not null references draft (id),
    name varchar(200) not null,
    format varchar(8) not null,
    state varchar(16) not null,
    header text not null,
    mapping text,
    size_bytes bigint not null,
    read_bytes bigint default 0 not null,
    row_count bigint default 0 not null,
    bad_count bigint default 0 not null,
    bad_rows text,
    trace text,
    left_count bigint default 0 not null,
    problem varchar(1000),
    claim varchar(36),
    person varchar(120) not null,
    created_at timestamp with time zone not null,
    changed_at timestamp with time zone not null,
    constraint flight_log_format check (position('|' || format || '|' in '|CSV|GPX|') > 0),
    constraint flight_log_state check (position('|' || state || '|' in '|UPLOADED|MAPPED|READING|READ|FAILED|') > 0)
);
create index flight_log_draft on flight_log (draft_id, created_at);
create index flight_log_waiting on flight_log (state, changed_at);

-- The file, packed, in pieces that H2 holds in a row.
create table flight_log_part (
    log_id varchar(36) not null references flight_log (id) on delete cascade,
    number integer not null,
    content bytea not null,
    constraint flight_log_part_key primary key (log_id, number)
);

-- What was found in it, and what became of that.
create table flight_log_event (
    log_id varchar(36) not null references flight_log (id) on delete cascade,
    number integer not null,
    content text not null,
    decision varchar(16) not null,
    point_id varchar(40),
    constraint flight_log_event_key primary key (log_id, number),
    constraint flight_log_event_decision check (position('|' || decision || '|' in '|OPEN|ACCEPTED|DROPPED|') > 0)
);

-- How columns were last read, by the header they stood in, for whoever brings the next log of that logger.
create table flight_log_mapping (
    header_sha256 char(64) primary key,
    mapping text not null,
    changed_at timestamp with time zone not null
);
