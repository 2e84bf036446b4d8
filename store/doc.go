// Package store keeps the show in one SQLite file. It is the only place with
// SQL, and speaks the kitchen's types.
//
// Reading goes to a pool of read-only connections and sees one moment;
// writing goes through one connection, one transaction at a time, and is on
// disk when the call returns. Every method takes the context first and stops
// when it ends; a write that was stopped has changed nothing.
//
// Errors are kitchen/fault errors in a wrap that names the operation and id.
// Nothing found, or found deleted, is fault.NotFound. What people edit has a
// Revision: a save must carry the one it read, counts it up by one, and is
// refused with fault.Conflict, changing nothing, when another save came first.
// fault.Busy means that the file was locked or the disk full.
//
// Deleting hides; Restore brings back, until PurgeDeleted.
package store
