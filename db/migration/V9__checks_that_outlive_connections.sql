-- H2 keeps the list of "in (…)" in a check together with the connection that made it, and refuses every row once that
-- connection is closed (2.4.240; a pool closes it after half an hour). A place in a text is no such list.

alter table airframe_revision drop constraint airframe_revision_state;
alter table airframe_revision add constraint airframe_revision_state
    check (position('|' || state || '|' in '|DRAFT|SUBMITTED|RETURNED|PUBLISHED|SUPERSEDED|WITHDRAWN|') > 0);

alter table device_revision drop constraint device_revision_state;
alter table device_revision add constraint device_revision_state
    check (position('|' || state || '|' in '|DRAFT|SUBMITTED|RETURNED|PUBLISHED|SUPERSEDED|WITHDRAWN|') > 0);

alter table layout_revision drop constraint layout_revision_state;
alter table layout_revision add constraint layout_revision_state
    check (position('|' || state || '|' in '|DRAFT|SUBMITTED|RETURNED|PUBLISHED|SUPERSEDED|WITHDRAWN|') > 0);

alter table draft drop constraint draft_state;
alter table draft add constraint draft_state
    check (position('|' || state || '|' in '|DRAFT|SUBMITTED|RETURNED|PUBLISHED|DISCARDED|') > 0);

alter table person drop constraint person_role;
alter table person add constraint person_role
    check (position('|' || role || '|' in '|MEMBER|MAINTAINER|STEWARD|') > 0);

alter table person drop constraint person_state;
alter table person add constraint person_state
    check (position('|' || state || '|' in '|PENDING|ACTIVE|CLOSED|') > 0);

alter table one_time_link drop constraint one_time_link_purpose;
alter table one_time_link add constraint one_time_link_purpose
    check (position('|' || purpose || '|' in '|SET_UP|INVITATION|RESET|') > 0);

alter table one_time_link drop constraint one_time_link_role;
alter table one_time_link add constraint one_time_link_role
    check (position('|' || role || '|' in '|MEMBER|MAINTAINER|STEWARD|') > 0);

alter table submission_check drop constraint submission_check_outcome;
alter table submission_check add constraint submission_check_outcome
    check (position('|' || outcome || '|' in '|PASSED|NOTICED|FAILED|') > 0);
