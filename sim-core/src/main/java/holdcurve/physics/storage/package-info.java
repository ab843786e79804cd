/**
 * What gives way when pressure changes: liquid, walls of lines and hoses, dampers, trapped air,
 * vapour. {@link holdcurve.physics.storage.Storage} is the contract for everything that answers at
 * once; creep of rubber has a memory of its own and is an element of the network. Pressures are
 * gauge pressures unless said otherwise.
 */
package holdcurve.physics.storage;
