-- What the tables were made again from: the journal, a copy and the journal, or a copy alone. Up to when that copy goes,
-- and how many facts a copy has that the journal lacks.
alter table rebuild add column source varchar(40) default 'JOURNAL' not null;
alter table rebuild add column copied_ms bigint;
alter table rebuild add column lacking bigint default 0 not null;
