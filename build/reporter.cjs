// Mocha's own report, closed by one plain line that counts what passed and what failed.
const { reporters } = require('mocha');

module.exports = class extends reporters.Spec {
  epilogue() {
    super.epilogue();
    const { passes, failures, pending } = this.stats;
    console.log(`${passes} passed, ${failures} failed${pending > 0 ? `, ${pending} skipped` : ''}`);
  }
};
