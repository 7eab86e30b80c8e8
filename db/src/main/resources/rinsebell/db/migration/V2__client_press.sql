-- The press that began a record: the same press again finds it instead of beginning another.
alter table client add column press_id varchar(64);

create unique index client_by_press on client (press_id);
