-- Long work: what somebody asked for, and how far it has come. V9 says why the checks have no list.
create table job (
    id varchar(36) primary key,
    kind varchar(40) not null,
    title varchar(200) not null,
    parameters text not null,
    owner_id varchar(36),
    state varchar(16) not null,
    claim varchar(36),
    attempts integer default 0 not null,
    cancel_asked boolean default false not null,
    done_count bigint default 0 not null,
    of_count bigint default 0 not null,
    words varchar(200),
    link varchar(500),
    file_name varchar(200),
    file_type varchar(100),
    file_size bigint,
    problem varchar(1000),
    created_at timestamp with time zone not null,
    changed_at timestamp with time zone not null,
    finished_at timestamp with time zone,
    constraint job_state check (position('|' || state || '|' in '|WAITING|RUNNING|DONE|FAILED|CANCELLED|') > 0)
);
create index job_finished on job (finished_at);
create index job_owner on job (owner_id, created_at);

-- The file that came of it, in pieces that H2 holds in a row.
create table job_part (
    job_id varchar(36) not null references job (id) on delete cascade,
    number integer not null,
    content bytea not null,
    constraint job_part_key primary key (job_id, number)
);

-- The queue that all instances share; columns as db-scheduler wants them.
create table scheduled_tasks (
    task_name varchar(100) not null,
    task_instance varchar(100) not null,
    task_data bytea,
    execution_time timestamp with time zone not null,
    picked boolean not null,
    picked_by varchar(50),
    last_success timestamp with time zone,
    last_failure timestamp with time zone,
    consecutive_failures integer,
    last_heartbeat timestamp with time zone,
    version bigint not null,
    priority smallint,
    constraint scheduled_tasks_key primary key (task_name, task_instance)
);
create index scheduled_tasks_due on scheduled_tasks (execution_time);
create index scheduled_tasks_heartbeat on scheduled_tasks (last_heartbeat);

-- The job that reads a log; absent on those that an earlier version was to read.
alter table flight_log add column job_id varchar(36);
