create table entry (
  number bigint primary key,
  stream text not null,
  stream_number bigint not null,
  id text not null unique,
  at text not null,
  by_whom text not null,
  device text not null,
  type text not null,
  body text not null,
  hash text not null,
  stream_hash text not null,
  unique (stream, stream_number)
);
create index entry_first on entry (number) where stream_number = 1;

create table signature (
  stream text not null,
  stream_number bigint not null,
  line text not null,
  primary key (stream, stream_number)
);

create table content (
  hash text not null,
  kind text not null check (kind in ('picture', 'document')),
  bytes bytea not null,
  primary key (hash, kind)
);

create function never() returns trigger language plpgsql as $$
begin
  raise exception 'an entry is never changed or removed';
end $$;
create trigger entry_stays before update or delete or truncate on entry
  for each statement execute function never();
