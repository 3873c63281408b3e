/**
 * Forces of gear meshes on shafts, the reactions of two bearings, and rating life. Along the shaft x counts from the
 * input end to the rear; angles round it count clockwise seen from the input end.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.bearing;
