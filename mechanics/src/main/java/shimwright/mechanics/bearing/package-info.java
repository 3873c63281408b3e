/**
 * Forces of gear meshes on shafts, the reactions of two bearings, and rating life; along the shaft x counts from
 * the input end to the rear, angles round it clockwise seen from the input end. A topic: it may touch what lies
 * below the topics, and no other topic.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.bearing;
