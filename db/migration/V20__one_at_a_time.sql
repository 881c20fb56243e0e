-- Work that is done for everybody: of each kind one at a time, whichever instance was asked. Empty once it is finished.
alter table job add column slot varchar(40);
alter table job add constraint job_slot unique (slot);
create index job_kind on job (kind, state, finished_at);
